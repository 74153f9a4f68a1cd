import { describe, expect, it } from "vitest";
import { type RowWithoutSentence, sentence } from "#lib/replenishment/sentence";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const row: RowWithoutSentence = {
  supplyId: "small-bubble",
  supply: "Small bubble",
  unit: "square-foot",
  onHand: amountOfUnits(61),
  onOrder: amountOfUnits(0),
  countedOn: day("2026-10-23"),
  position: amountOfUnits(61),
  bookError: amountOfUnits(2),
  usePerWeek: amountOfUnits(23),
  method: "Average of the last 8 weeks",
  weeks: [],
  protectionDays: 16,
  leadTimeDays: 9,
  expectedUse: amountOfUnits(52),
  errorDeviation: amountOfUnits(8),
  safetyStock: amountOfUnits(13),
  reorderPoint: amountOfUnits(65),
  daysOfCover: 18,
  oddsToday: 0.02,
  oddsNextCheck: 0.08,
  carefulRunOutDate: day("2026-12-07"),
  runOutDate: day("2026-12-14"),
  shortFrom: null,
  arrivalDate: day("2026-12-04"),
  arrivals: [],
  orderByDate: day("2026-11-27"),
  offerId: null,
  suggestedPacks: null,
  packsByOffer: [],
  action: "order-this-week",
  guess: null,
};
const said = (more: Partial<RowWithoutSentence>) => sentence({ ...row, ...more }, today);
const due = (units: number, on: string) => ({ amount: amountOfUnits(units), expectedOn: day(on) });

describe("sentence", () => {
  it("says how long it lasts and by when to order", () => {
    expect(said({})).toBe("Lasts until 7 Dec; order by Fri 27 Nov.");
  });

  it("order today: in time if placed today", () => {
    expect(said({ action: "order-today", carefulRunOutDate: day("2026-12-05"), orderByDate: today })).toBe(
      "Order today: lasts until 5 Dec, an order placed today comes 4 Dec.",
    );
  });

  it("order today: likely in time, but the careful estimate is not", () => {
    const days = { carefulRunOutDate: day("2026-12-01"), runOutDate: day("2026-12-08"), orderByDate: today };
    expect(said({ action: "order-today", ...days })).toBe(
      "Order today: likely lasts until 8 Dec but may end sooner, an order placed today comes 4 Dec.",
    );
  });

  it("order today: likely too late already", () => {
    const days = { carefulRunOutDate: today, runOutDate: day("2026-11-30"), orderByDate: today };
    expect(said({ action: "order-today", ...days })).toBe(
      "Order today: likely gone by 30 Nov, an order placed today comes 4 Dec.",
    );
  });

  it("mentions what is on order and counted in", () => {
    expect(said({ arrivals: [due(50, "2026-12-01")] })).toBe(
      "Lasts until 7 Dec; order by Fri 27 Nov. 50 sq ft due 1 Dec, counted in.",
    );
    expect(said({ arrivals: [due(50, "2026-11-20")] })).toBe(
      "Lasts until 7 Dec; order by Fri 27 Nov. 50 sq ft were due 20 Nov: ask where they are.",
    );
  });

  it("adds up what is due on several days", () => {
    const arrivals = [due(50, "2026-12-01"), due(25, "2026-12-03")];
    expect(said({ action: "on-its-way", arrivals })).toBe("75 sq ft due from 1 Dec. Nothing to do.");
  });

  it("says an average whole and what is booked to the eighth", () => {
    const figures = { unit: "piece", usePerWeek: amountOfUnits(635.875) } as const;
    expect(said({ ...figures, action: "count", onHand: amountOfUnits(-1_120.125) })).toBe(
      "The book says −1,120⅛ pieces: count this to get a date. About 636 pieces a week are used.",
    );
  });

  it("gives the year of far days", () => {
    expect(said({ action: "enough", carefulRunOutDate: day("2028-01-15") })).toBe(
      "Enough until 15 Jan 2028.",
    );
    expect(said({ action: "enough" })).toBe("Enough until 7 Dec.");
    expect(said({ action: "enough", carefulRunOutDate: null })).toBe("Enough: little is used.");
  });

  it("uses the row's own unit for the use", () => {
    const uncounted = { action: "count", onHand: null } as const;
    expect(said(uncounted)).toBe("Never counted: count this to get a date. About 23 sq ft a week are used.");
    expect(said({ ...uncounted, unit: "sheet", usePerWeek: amountOfUnits(1) })).toBe(
      "Never counted: count this to get a date. About 1 sheet a week is used.",
    );
  });

  it("refuses a row that must be ordered by no day", () => {
    expect(() => said({ orderByDate: null })).toThrow(RangeError);
  });
});
