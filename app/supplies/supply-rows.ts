import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { Stock, Supply } from "#prisma/records/supplies";
import { countUnitWords } from "./count-unit-words";
import { unitCostWords } from "./unit-cost-words";

/** One row of the table of supplies, ready to show. */
export type SupplyRow = {
  readonly id: string;
  readonly name: string;
  readonly onHand: string;
  readonly usePerWeek: string;
  readonly unitCost: string;
  readonly counted: string;
  readonly state: "never-counted" | "below-zero" | "counted";
};

type Known = {
  readonly stock: ReadonlyMap<string, Stock & { readonly countedDay: Day | null }>;
  readonly usePerWeek: ReadonlyMap<string, Amount>;
  readonly currency: string;
  readonly minorDigits: number;
};

const STATE_ORDER = { "never-counted": 0, "below-zero": 1, counted: 2 } as const;

/**
 * The table of supplies: what was never counted first, then what stands below zero, then the shelf's order.
 *
 * @param supplies in the order of the shelf
 * @param known stock, use and currency
 * @returns one row each
 */
export function supplyRows(supplies: readonly Supply[], known: Known): SupplyRow[] {
  const rows = supplies.map((supply) => supplyRow(supply, known));
  return rows.sort((left, right) => STATE_ORDER[left.state] - STATE_ORDER[right.state]);
}

function supplyRow(supply: Supply, known: Known): SupplyRow {
  const stock = known.stock.get(supply.id);
  const use = known.usePerWeek.get(supply.id);
  const countedDay = stock?.countedDay ?? null;
  const onHand = stock === undefined || countedDay === null ? null : stock.amount;
  return {
    id: supply.id,
    name: supply.name,
    onHand: onHand === null ? "not counted" : onHandWords(onHand, supply),
    usePerWeek: use === undefined || use === 0 ? "none yet" : `${formatEstimate(use, supply.useUnit)} a week`,
    unitCost: unitCostWords(stock?.unitCost ?? null, supply.useUnit, known),
    counted: countedDay === null ? "never" : formatDay(countedDay),
    state: stateOf(onHand),
  };
}

function stateOf(onHand: Amount | null): SupplyRow["state"] {
  if (onHand === null) return "never-counted";
  return onHand < 0 ? "below-zero" : "counted";
}

/** The stock in use units, with whole rolls or bundles beside it where the supply is counted so. */
export function onHandWords(onHand: Amount, supply: Supply): string {
  const words = formatAmount(onHand, supply.useUnit);
  if (supply.countUnit === null || supply.countAmount === null || onHand < 0) return words;
  const counted = formatAmount(amount(Math.round((onHand / supply.countAmount) * AMOUNT_PER_UNIT)), "each");
  return `${words} (${counted} ${counted === "1" ? supply.countUnit : countUnitWords(supply.countUnit)})`;
}
