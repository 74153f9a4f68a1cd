import { closedCalendar } from "#lib/forecast/open-days";
import { type PeakPreparation, peakPreparation } from "#lib/replenishment/peak-preparation";
import type { ShopTerms, SupplyOutlookInput, WeeklyCheck } from "#lib/replenishment/weekly-check";
import { amount } from "#lib/units/amount";

/** A supply that a coming peak takes more of. */
export type PeakRow = PeakPreparation & Pick<SupplyOutlookInput, "supplyId" | "name" | "unit">;

const MONTH = { from: 5, to: 7 } as const;
const PREPARED_FROM = 9;
const PREPARED_TO = 11;

/**
 * What to have in the house before the peak: from September to November, by last year's shape and planned events.
 *
 * @param check the weekly check
 * @param inputs what it was made from
 * @param terms for the closed days
 * @returns supplies of which something is missing, the earliest busiest week first; none in other months
 */
export function peakRows(
  check: WeeklyCheck,
  inputs: readonly SupplyOutlookInput[],
  terms: Pick<ShopTerms, "closed">,
): PeakRow[] {
  const month = Number(check.day.slice(MONTH.from, MONTH.to));
  if (month < PREPARED_FROM || month > PREPARED_TO) return [];
  const calendar = closedCalendar(terms.closed);
  return inputs
    .flatMap(({ supplyId, name, unit, forecast, onHand, onOrder }): PeakRow[] => {
      if (forecast === null || onHand === null) return [];
      const position = amount(onHand + onOrder.reduce((sum, each) => sum + each.amount, 0));
      const peak = peakPreparation({ path: forecast.path, position, today: check.day }, calendar);
      return peak === null || peak.missing === 0 ? [] : [{ ...peak, supplyId, name, unit }];
    })
    .toSorted((a, b) => (a.busiestWeek < b.busiestWeek ? -1 : 1));
}
