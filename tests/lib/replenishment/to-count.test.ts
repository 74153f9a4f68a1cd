import { describe, expect, it } from "vitest";
import { toCount } from "#lib/replenishment/to-count";
import { type SupplyOutlookInput, weeklyCheck } from "#lib/replenishment/weekly-check";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { TERMS } from "./shop-terms";
import { supplyForecast } from "./supply-forecast";

const today = day("2026-11-25");
const supply = (supplyId: string, onHand: number | null, countedOn: string | null): SupplyOutlookInput => ({
  supplyId,
  name: supplyId,
  unit: "each",
  onHand: onHand === null ? null : amountOfUnits(onHand),
  countedOn: countedOn === null ? null : day(countedOn),
  onOrder: [],
  useByDay: Array.from({ length: 10 }, (_, week) => ({
    day: addDays(day("2026-09-14"), 7 * week),
    amount: amountOfUnits(10),
  })),
  forecast: supplyForecast(10),
  firstDay: day("2026-09-14"),
  offers: [],
});

describe("what to count", () => {
  it("is what has no figure, then what is about to be ordered by an old count", () => {
    const supplies = [
      supply("old", 5, "2026-10-23"),
      supply("fresh", 5, "2026-11-01"),
      supply("plenty", 900, "2026-01-05"),
      supply("below", -2, "2026-11-01"),
      supply("never", null, null),
    ];
    expect(toCount(weeklyCheck(supplies, TERMS, today).rows, today)).toEqual([
      { supplyId: "below", reason: "the book is below zero" },
      { supplyId: "never", reason: "never counted" },
      { supplyId: "old", reason: "last counted 23 Oct; a count could change the order" },
    ]);
  });

  it("is nothing without supplies", () => {
    expect(toCount([], today)).toEqual([]);
  });
});
