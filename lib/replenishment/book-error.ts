import type { CountCorrection } from "#lib/forecast/count-correction";
import type { SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

/** Of what is used since a count the book is off by so much as a rule, before counts say more; a guess, no source. */
const GUESSED_SHARE = 0.1;
/** Counts that agree with the book do not make it perfect; a guess, no source. */
const LEAST_SHARE = 0.05;

/**
 * How far the book may be off: a share of what was used since the last count, by what earlier counts found.
 *
 * @param input use a day and the day of the last count
 * @param correction what the counts of the last 26 weeks found
 * @param today later use is not looked at
 * @returns a typical error, 0 where nothing was used since
 * @example bookError({ useByDay: [{ day: yesterday, amount: amountOfUnits(50) }], countedOn: lastWeek }, { kind: "none" }, today)
 * // 5 use units
 */
export function bookError(
  { useByDay, countedOn }: Pick<SupplyOutlookInput, "useByDay" | "countedOn">,
  correction: CountCorrection,
  today: Day,
): Amount {
  const used = useByDay
    .filter((use) => use.day <= today && (countedOn === null || use.day > countedOn))
    .reduce((sum, use) => sum + use.amount, 0);
  return amount(Math.round(used * shareOf(correction)));
}

function shareOf(correction: CountCorrection): number {
  if (correction.kind === "none") return GUESSED_SHARE;
  return Math.max(LEAST_SHARE, Math.abs(correction.differenceSum) / correction.recordedUse);
}
