import fc from "fast-check";
import type { ClosedSpan } from "#lib/forecast/open-days";
import { amount } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { onTime } from "./on-time";
import { roll, rowOf, today } from "./small-bubble";
import { supplyForecast } from "./supply-forecast";

/** None, or at least a hundredth: less of anything is not used in years. */
const noneOrSome = (max: number) => fc.oneof(fc.constant(0), fc.double({ min: 0.01, max, noNaN: true }));
const forecasts = fc.record({
  perWeek: fc.array(noneOrSome(300), { minLength: 1, maxLength: 10 }),
  perUse: noneOrSome(20),
  dispersion: noneOrSome(1),
  whole: fc.boolean(),
});
const arrivals = fc.array(
  fc.record({ parts: fc.integer({ min: 1, max: 900_000 }), inDays: fc.integer({ min: -5, max: 60 }) }),
  { maxLength: 3 },
);
/** Any forecast, stock, orders on their way, lead time and closed days. */
export const situation = fc.record({
  forecast: forecasts,
  arrivals,
  onHand: fc.integer({ min: 0, max: 4_000_000 }),
  leadTimeDays: fc.integer({ min: 0, max: 25 }),
  reviewDays: fc.integer({ min: 1, max: 14 }),
  closure: fc.option(
    fc.record({ from: fc.integer({ min: -5, max: 30 }), days: fc.integer({ min: 0, max: 12 }) }),
  ),
});
type Situation = typeof situation extends fc.Arbitrary<infer Value> ? Value : never;

/** The closed days of a situation. */
export function closedOf({ closure }: Situation): ClosedSpan[] {
  if (closure === null) return [];
  const fromDay = addDays(today, closure.from);
  return [{ fromDay, toDay: addDays(fromDay, closure.days) }];
}

/** The check’s row in a situation. */
export function rowIn(given: Situation, onHand = given.onHand) {
  const { perWeek, perUse, dispersion, whole } = given.forecast;
  return rowOf(
    {
      onHand: amount(onHand),
      forecast: supplyForecast(0, {
        path: { firstWeek: day("2026-11-23"), perWeek },
        spread: { perUse, dispersions: [dispersion, dispersion / 2], whole },
      }),
      onOrder: given.arrivals.map(({ parts, inDays }) => ({
        amount: amount(parts),
        expectedOn: addDays(today, inDays),
      })),
      offers: [{ ...roll, delivery: onTime(given.leadTimeDays) }],
    },
    today,
    { reviewDays: given.reviewDays, closed: closedOf(given) },
  );
}
