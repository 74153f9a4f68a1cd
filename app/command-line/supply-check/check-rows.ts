import type { CheckRow } from "#lib/replenishment/check-row";
import { type Amount, unitsOf } from "#lib/units/amount";

/** A row of the check for other programs: numbers in the supply's use unit, null where unknown. */
type PlainCheckRow = {
  readonly supply: string;
  readonly onHand: number | null;
  readonly onOrder: number;
  readonly unit: string;
  readonly usePerWeek: number | null;
  readonly reorderPoint: number | null;
  readonly runOutDate: string | null;
  readonly orderByDate: string | null;
  readonly suggestedPacks: number | null;
  readonly action: string;
  readonly sentence: string;
};

/**
 * Writes the check's rows as plain values.
 *
 * @param rows - rows of the weekly check
 * @returns the same rows in the same order, amounts in use units
 * @example plainCheckRows(check.rows)[0]?.onHand; // 174
 */
export function plainCheckRows(rows: readonly CheckRow[]): PlainCheckRow[] {
  return rows.map((row) => ({
    supply: row.supply,
    onHand: units(row.onHand),
    onOrder: unitsOf(row.onOrder),
    unit: row.unit,
    usePerWeek: units(row.usePerWeek),
    reorderPoint: units(row.reorderPoint),
    runOutDate: row.runOutDate,
    orderByDate: row.orderByDate,
    suggestedPacks: row.suggestedPacks,
    action: row.action,
    sentence: row.sentence,
  }));
}

function units(value: Amount | null): number | null {
  return value === null ? null : unitsOf(value);
}
