import { type Amount, amount } from "#lib/units/amount";
import { addDays, type Day, weekStart } from "#lib/units/day";
import type { SupplyWeek } from "#prisma/records/movements";

/** One week of a supply: where it went. Use is positive. */
export type UseWeek = {
  readonly weekStart: Day;
  readonly packed: Amount;
  readonly spoilt: Amount;
  readonly cameIn: Amount;
  readonly countDifference: Amount;
  /** The week that today lies in is not over. */
  readonly isRunning: boolean;
};

/**
 * The last weeks of a supply with none left out: a week without movements is a week of no use.
 *
 * @param weeks as the records give them, weeks without movements missing
 * @param today the shop's day
 * @param weekStartsOn 1 Monday … 7 Sunday
 * @param count how many weeks, the running one included
 * @returns oldest first, beginning no earlier than the first movement
 */
export function weeksOfUse(
  weeks: readonly SupplyWeek[],
  today: Day,
  weekStartsOn: number,
  count: number,
): UseWeek[] {
  const first = weeks[0];
  if (first === undefined) return [];
  const byStart = new Map(weeks.map((week) => [week.weekStart, week.byCause]));
  const running = weekStart(today, weekStartsOn);
  const starts = Array.from({ length: count }, (_, index) => addDays(running, -7 * (count - 1 - index)));
  return starts
    .filter((start) => start >= first.weekStart)
    .map((start) => {
      const of = (cause: Parameters<SupplyWeek["byCause"]["get"]>[0]) => byStart.get(start)?.get(cause) ?? 0;
      return {
        weekStart: start,
        packed: amount(-(of("packed") + of("returned"))),
        spoilt: amount(-of("spoilt")),
        cameIn: amount(of("received") + of("saved")),
        countDifference: amount(of("count-difference")),
        isRunning: start === running,
      };
    });
}
