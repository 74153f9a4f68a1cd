import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ClosedSpan, closedCalendar, openDays } from "#lib/forecast/open-days";
import { protectionInterval } from "#lib/replenishment/order-by";
import { stockPosition } from "#lib/replenishment/stock-position";
import { type ShopTerms, type SupplyOutlookInput, weeklyCheck } from "#lib/replenishment/weekly-check";
import { amount, amountOfUnits } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { TERMS } from "./shop-terms";
import { supplyForecast } from "./supply-forecast";

// All figures are invented.
const today = day("2026-11-25");
const firstDay = day("2026-06-01");
const roll = {
  offerId: "roll-175",
  supplierId: "marram",
  supplierName: "Marram",
  leadTimeDays: 9,
  pack: "roll of 175 ft",
  packAmount: amountOfUnits(175),
  priceMinor: 2600,
  breaks: [],
};

/** Steady use: the same every Tuesday. */
function everyTuesday(units: number) {
  return Array.from({ length: 25 }, (_, week) => ({
    day: addDays(day("2026-06-02"), 7 * week),
    amount: amountOfUnits(units),
  }));
}

const bubble: SupplyOutlookInput = {
  supplyId: "small-bubble",
  name: "Small bubble",
  unit: "square-foot",
  onHand: amountOfUnits(60),
  countedOn: day("2026-11-20"),
  onOrder: [],
  useByDay: everyTuesday(21),
  firstDay,
  forecast: supplyForecast(21),
  offers: [roll],
};

function rowOf(more: Partial<SupplyOutlookInput>, at: Day = today, shop: Partial<ShopTerms> = {}) {
  const [row] = weeklyCheck([{ ...bubble, ...more }], { ...TERMS, ...shop }, at).rows;
  if (row === undefined) throw new RangeError("rowOf requires a row, got none");
  return row;
}

describe("weekly check", () => {
  it("works out a steady supply as by hand: 21 a week, 16 days, order at 48", () => {
    const row = rowOf({});
    expect(row).toMatchObject({
      usePerWeek: amountOfUnits(21),
      method: "Expected pieces of each item type by today's recipes",
      protectionDays: 16,
      leadTimeDays: 9,
      expectedUse: amountOfUnits(48),
      errorDeviation: 0,
      safetyStock: 0,
      reorderPoint: amountOfUnits(48),
      daysOfCover: 20,
      carefulRunOutDate: "2026-12-15",
      runOutDate: "2026-12-15",
      arrivalDate: "2026-12-04",
      orderByDate: "2026-12-05",
      action: "order-later",
      guess: null,
      sentence: "Lasts until 15 Dec; order by Sat 5 Dec.",
    });
  });

  it("lifts the position to the reorder point and six weeks of use: 48 + 126 − 20 needs one roll", () => {
    const row = rowOf({
      onHand: amountOfUnits(20),
      offers: [roll, { ...roll, offerId: "short", packAmount: amountOfUnits(100), priceMinor: null }],
    });
    expect(row.offerId).toBe("roll-175");
    expect(row.suggestedPacks).toBe(1);
    expect(row.packsByOffer).toEqual([
      { offerId: "roll-175", pack: "roll of 175 ft", packs: 1, priceMinor: 2600 },
      { offerId: "short", pack: "roll of 175 ft", packs: 2, priceMinor: null },
    ]);
  });

  it("needs no offer at all, and says that the lead time is assumed", () => {
    const row = rowOf({ offers: [] });
    expect(row).toMatchObject({ leadTimeDays: 7, offerId: null, suggestedPacks: null, packsByOffer: [] });
    expect(row.guess).toBe("a lead time of 7 days is assumed, as there is no offer.");
  });

  it("tells of a supply never counted what is used and what would be needed", () => {
    const row = rowOf({ onHand: null, countedOn: null });
    expect(row).toMatchObject({
      onHand: null,
      usePerWeek: amountOfUnits(21),
      reorderPoint: amountOfUnits(48),
      carefulRunOutDate: null,
      orderByDate: null,
      suggestedPacks: null,
      action: "count",
      sentence: "Never counted: count this to get a date. About 21 sq ft a week are used.",
    });
  });

  it("says what the counts changed, and shows the weeks as recorded", () => {
    const correction = {
      kind: "corrected",
      factor: 1.08,
      differences: 2,
      differenceSum: -amountOfUnits(42),
      recordedUse: amountOfUnits(525),
    } as const;
    const row = rowOf({ forecast: supplyForecast(22.68, { correction }) });
    expect(row.usePerWeek).toBe(amountOfUnits(22.68));
    expect(row.explanation.map((line) => line.label)).toContain("Corrected by counts");
    expect(row.weeks.at(-1)?.amount).toBe(amountOfUnits(21));
  });

  it("keeps a closed week in the list, marked as closed", () => {
    const useByDay = everyTuesday(21).filter((use) => use.day !== "2026-11-17");
    const row = rowOf({ useByDay }, today, {
      closed: [{ fromDay: day("2026-11-16"), toDay: day("2026-11-22") }],
    });
    expect(row.weeks.at(-1)).toEqual({ weekStart: "2026-11-16", amount: 0, closed: true });
  });

  it("does not change when later rows are added", () => {
    const later = day("2026-11-26");
    const more = {
      useByDay: [...bubble.useByDay, { day: later, amount: amountOfUnits(9000) }],
    };
    expect(rowOf(more)).toEqual(rowOf({}));
  });

  it("says of a supply without a forecast that it is not used, or to count what is new", () => {
    expect(rowOf({ forecast: null, useByDay: [] })).toMatchObject({
      action: "no-use",
      usePerWeek: null,
      reorderPoint: null,
      sentence: "No use recorded yet. 60 sq ft on hand.",
    });
    const fresh = { forecast: null, useByDay: [], onHand: null, firstDay: day("2026-11-20") };
    expect(rowOf(fresh).action).toBe("count");
  });

  it("is the same check on that day with the whole record as with the record up to that day", () => {
    const then = day("2026-09-16");
    const until = bubble.useByDay.filter((use) => use.day <= then);
    expect(rowOf({}, then)).toEqual(rowOf({ useByDay: until }, then));
  });

  it("puts the urgent first and says so in one line", () => {
    const inputs = [
      { ...bubble, supplyId: "d", name: "Tissue", onHand: amountOfUnits(900) },
      { ...bubble, supplyId: "c", name: "Tape", onHand: null },
      { ...bubble, supplyId: "b", name: "Large bubble", onHand: amountOfUnits(33) },
      { ...bubble, supplyId: "a", name: "Small bubble", onHand: amountOfUnits(20) },
    ];
    const check = weeklyCheck(inputs, TERMS, today);
    expect(check.rows.map((row) => row.action)).toEqual([
      "order-today",
      "order-this-week",
      "count",
      "enough",
    ]);
    expect(check.finding).toBe(
      "Order Small bubble today and Large bubble by Thursday; count one more to be sure.",
    );
    expect(check.toCount).toEqual([{ supplyId: "c", reason: "never counted" }]);
  });

  it("refuses a review period under a day", () => {
    expect(() => weeklyCheck([], { ...TERMS, reviewDays: 0 }, today)).toThrow(RangeError);
  });
});

const forecasts = fc.record({
  perWeek: fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1, maxLength: 10 }),
  perUse: fc.double({ min: 0, max: 20, noNaN: true }),
  dispersion: fc.double({ min: 0, max: 1, noNaN: true }),
  whole: fc.boolean(),
});
const arrivals = fc.array(
  fc.record({ parts: fc.integer({ min: 1, max: 900_000 }), inDays: fc.integer({ min: -5, max: 60 }) }),
  { maxLength: 3 },
);
const situation = fc.record({
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

function closedOf({ closure }: Situation): ClosedSpan[] {
  if (closure === null) return [];
  const fromDay = addDays(today, closure.from);
  return [{ fromDay, toDay: addDays(fromDay, closure.days) }];
}

function rowIn(given: Situation, onHand = given.onHand) {
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
      offers: [{ ...roll, leadTimeDays: given.leadTimeDays }],
    },
    today,
    { reviewDays: given.reviewDays, closed: closedOf(given) },
  );
}

describe("weekly check, whatever the records", () => {
  it("the position is at or under the reorder point exactly when the order must go before the next check", () => {
    fc.assert(
      fc.property(situation, (given) => {
        const row = rowIn(given);
        fc.pre(row.reorderPoint !== null && row.action !== "no-use");
        const calendar = closedCalendar(closedOf(given));
        const { until } = protectionInterval(today, given, calendar);
        const position = stockPosition(row.onHand, row.arrivals, until) ?? Number.NaN;
        const isDue = row.orderByDate !== null && row.orderByDate < addDays(today, given.reviewDays);
        expect(isDue).toBe(position <= (row.reorderPoint ?? Number.NaN));
        expect(isDue).toBe(row.action === "order-today" || row.action === "order-this-week");
        expect(openDays(today, until, calendar)).toBeLessThanOrEqual(row.protectionDays);
      }),
      { numRuns: 400 },
    );
  });

  it("one part of a use unit over the reorder point can wait for the next check, none over it cannot", () => {
    const onTheEdge = fc.record({
      over: fc.integer({ min: -1, max: 1 }),
      lastDay: fc.integer({ min: 1, max: 900 }),
    });
    fc.assert(
      fc.property(situation, onTheEdge, (given, { over, lastDay }) => {
        const { until, days } = protectionInterval(today, given, closedCalendar(closedOf(given)));
        const arriving = { ...given, arrivals: [{ parts: lastDay, inDays: days }] };
        const { reorderPoint, action } = rowIn(arriving);
        fc.pre(reorderPoint !== null && action !== "no-use");
        const onHand = (reorderPoint ?? 0) - lastDay + over;
        fc.pre(onHand >= 0);
        const row = rowIn(arriving, onHand);
        expect(row.arrivals[0]?.expectedOn).toBe(until);
        expect(row.action === "order-today" || row.action === "order-this-week").toBe(over <= 0);
      }),
      { numRuns: 400 },
    );
  });

  it("more on hand never makes an order more urgent, nor lets stock end sooner", () => {
    fc.assert(
      fc.property(situation, fc.integer({ min: 1, max: 2_000_000 }), (given, more) => {
        const less = rowIn(given);
        const plenty = rowIn(given, given.onHand + more);
        expect((plenty.orderByDate ?? "~") >= (less.orderByDate ?? "~")).toBe(true);
        expect((plenty.carefulRunOutDate ?? "~") >= (less.carefulRunOutDate ?? "~")).toBe(true);
        expect(plenty.reorderPoint).toBe(less.reorderPoint);
      }),
    );
  });

  it("the careful day is never after the likely one, and the sentence ends with a full stop", () => {
    fc.assert(
      fc.property(situation, (given) => {
        const row = rowIn(given);
        expect((row.carefulRunOutDate ?? "~") <= (row.runOutDate ?? "~")).toBe(true);
        expect(row.sentence).toMatch(/^[A-Z0-9⅛¼⅜½⅝¾⅞⅓⅔⅙⅚].*\.$/);
      }),
    );
  });

  it("does not change its input", () => {
    const inputs = structuredClone([bubble]);
    weeklyCheck(inputs, TERMS, today);
    expect(inputs).toEqual([bubble]);
  });
});
