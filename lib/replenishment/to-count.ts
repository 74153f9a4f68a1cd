import type { CheckRow } from "#lib/replenishment/check-row";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/** A supply to count, and why. */
export type ToCount = {
  readonly supplyId: string;
  readonly reason: string;
  /** chance that a count would turn an order on or off, 0 to 1; null where there is no stock figure */
  readonly chance: number | null;
  /** what that order would cost, minor units; null where it is not known */
  readonly orderMinor: number | null;
};

/** A count that changes nothing in nine of ten cases is not asked for; a guess, no source. */
const LEAST_CHANCE = 0.1;
const YEAR_FROM_DAYS = 300;
const TENTHS = 10;

/**
 * What to count: supplies without a stock figure, then those where the book may be off by so much that a count would
 * change whether they are ordered, the order that costs most times its chance first.
 *
 * @param rows rows of the check, most urgent first
 * @param today the day of the check
 * @returns supplies with the reason and what is at stake
 * @see the chance that a normal error of the book lies beyond the distance to the reorder point (from memory)
 * @example toCount([], day("2026-11-25")) // []
 */
export function toCount(rows: readonly CheckRow[], today: Day): ToCount[] {
  const unknown = rows
    .filter((row) => row.action === "count")
    .map((row): ToCount => {
      const reason = row.onHand === null ? "never counted" : "the book is below zero";
      return { supplyId: row.supplyId, reason, chance: null, orderMinor: null };
    });
  const unsure = rows
    .flatMap((row): ToCount[] => {
      const chance = chanceOfChange(row);
      if (chance < LEAST_CHANCE) return [];
      const orderMinor = row.packsByOffer.find((each) => each.offerId === row.offerId)?.priceMinor ?? null;
      return [{ supplyId: row.supplyId, reason: reasonOf(row, chance, today), chance, orderMinor }];
    })
    .toSorted((a, b) => atStake(b) - atStake(a));
  return [...unknown, ...unsure];
}

/** A count would find the position on the other side of the reorder point. */
function chanceOfChange({ position, reorderPoint, bookError }: CheckRow): number {
  if (position === null || reorderPoint === null || bookError === null || bookError <= 0) return 0;
  return normalCumulative(-Math.abs(position - reorderPoint) / bookError);
}

function atStake({ chance, orderMinor }: ToCount): number {
  return (chance ?? 0) * (1 + (orderMinor ?? 0));
}

function reasonOf({ countedOn }: CheckRow, chance: number, today: Day): string {
  const since =
    countedOn === null
      ? "counted long ago"
      : `last counted ${formatDay(countedOn, { year: daysBetween(countedOn, today) >= YEAR_FROM_DAYS })}`;
  return `${since}; in ${Math.round(chance * TENTHS)} of 10 cases a count would change the order`;
}
