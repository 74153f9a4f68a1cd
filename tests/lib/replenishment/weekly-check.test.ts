import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar, nextOpenDay, openDays } from "#lib/forecast/open-days";
import { stockPosition } from "#lib/replenishment/stock-position";
import { weeklyCheck } from "#lib/replenishment/weekly-check";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { closedOf, rowIn, situation } from "./check-situation";
import { TERMS } from "./shop-terms";
import { bubble, everyTuesday, roll, rowOf, today } from "./small-bubble";
import { supplyForecast } from "./supply-forecast";

describe("weekly check", () => {
  // Used from the order to the delivery: 9 days of 3 are 27. At the check that sees it, stock is anything up to a week's
  // use below the point: 10.5 as a rule (deviation 21 / √12 = 6.06), 19.95 in 95 of 100.
  it("works out a steady supply as by hand: 21 a week, 9 days, order at 46.95", () => {
    const row = rowOf({});
    expect(row).toMatchObject({
      usePerWeek: amountOfUnits(21),
      method: "Expected pieces of each item type by today's recipes",
      protectionDays: 16,
      leadTimeDays: 9,
      daysOfCover: 20,
      carefulRunOutDate: "2026-12-15",
      runOutDate: "2026-12-15",
      arrivalDate: "2026-12-04",
      orderByDate: "2026-12-06",
      action: "order-later",
      guess: null,
      sentence: "Lasts until 15 Dec; order by Sun 6 Dec.",
    });
    expect((row.expectedUse ?? 0) / 12_000).toBeCloseTo(37.5, 2);
    expect((row.errorDeviation ?? 0) / 12_000).toBeCloseTo(21 / Math.sqrt(12), 2);
    expect((row.reorderPoint ?? 0) / 12_000).toBeCloseTo(46.95, 1);
    expect(row.safetyStock).toBe((row.reorderPoint ?? 0) - (row.expectedUse ?? 0));
  });

  it("lifts the position to the reorder point and six weeks of use: 47 + 126 − 20 needs one roll", () => {
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
      carefulRunOutDate: null,
      orderByDate: null,
      suggestedPacks: null,
      action: "count",
      sentence: "Never counted: count this to get a date. About 21 sq ft a week are used.",
    });
    expect((row.reorderPoint ?? 0) / 12_000).toBeCloseTo(46.95, 1);
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
      "Order Small bubble today and Large bubble by Friday; count one more to be sure.",
    );
    expect(check.toCount).toEqual([
      { supplyId: "c", reason: "never counted", chance: null, orderMinor: null },
    ]);
  });

  it("refuses a review period under a day", () => {
    expect(() => weeklyCheck([], { ...TERMS, reviewDays: 0 }, today)).toThrow(RangeError);
  });
});

describe("weekly check, whatever the records", () => {
  it("the position is at or under the reorder point exactly when the order must go before the next check", () => {
    fc.assert(
      fc.property(situation, (given) => {
        const row = rowIn(given);
        fc.pre(row.reorderPoint !== null && row.action !== "no-use");
        const calendar = closedCalendar(closedOf(given));
        const until = addDays(today, row.protectionDays);
        const position = stockPosition(row.onHand, row.arrivals, until) ?? Number.NaN;
        const nextCheck = nextOpenDay(addDays(today, given.reviewDays), calendar);
        const isDue = row.orderByDate !== null && row.orderByDate < nextCheck;
        const isUsed = row.carefulRunOutDate !== null;
        expect(isDue).toBe(isUsed && position <= (row.reorderPoint ?? Number.NaN));
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
        const days = rowIn(given).protectionDays;
        const until = addDays(today, days);
        const arriving = { ...given, arrivals: [{ parts: lastDay, inDays: days }] };
        const { reorderPoint, action } = rowIn(arriving);
        fc.pre(reorderPoint !== null && action !== "no-use");
        const onHand = (reorderPoint ?? 0) - lastDay + over;
        fc.pre(onHand >= 0);
        const row = rowIn(arriving, onHand);
        expect(row.arrivals[0]?.expectedOn).toBe(until);
        const isUsed = row.carefulRunOutDate !== null;
        expect(row.action === "order-today" || row.action === "order-this-week").toBe(isUsed && over <= 0);
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
