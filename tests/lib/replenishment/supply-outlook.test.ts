import { describe, expect, it } from "vitest";
import { shopWeeks } from "#lib/forecast/shop-weeks";
import { supplyOutlook } from "#lib/replenishment/supply-outlook";
import type { SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { amount, amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { TERMS } from "./shop-terms";
import { supplyForecast } from "./supply-forecast";

// All figures are invented.
const today = day("2026-11-25");
const firstDay = day("2026-01-05");
const paper: SupplyOutlookInput = {
  supplyId: "paper",
  name: "Packing paper 24 × 36",
  unit: "sheet",
  onHand: amountOfUnits(174),
  countedOn: day("2026-11-20"),
  onOrder: [],
  useByDay: Array.from({ length: 46 }, (_, week) => ({
    day: addDays(day("2026-01-06"), 7 * week),
    amount: amountOfUnits(98),
  })),
  firstDay,
  forecast: supplyForecast(98),
  offers: [],
  goal: null,
};

function outlook(more: Partial<SupplyOutlookInput>) {
  const input = { ...paper, ...more };
  const weeks = shopWeeks({ firstDay: input.firstDay, today, weekStartsOn: 1, calendar: [] });
  return supplyOutlook(input, { terms: TERMS, today, calendar: [], weeks });
}
const due = (units: number, on: string) => ({ amount: amountOfUnits(units), expectedOn: day(on) });

describe("outlook of a supply", () => {
  it("is on its way when only the order placed keeps it from being due", () => {
    expect(outlook({ onOrder: [due(500, "2026-12-01")] })).toMatchObject({
      action: "on-its-way",
      onOrder: amountOfUnits(500),
      shortFrom: null,
      sentence: "500 sheets due 1 Dec. Nothing to do.",
    });
  });

  it("says when stock likely ends before what is on its way comes", () => {
    expect(outlook({ onHand: amountOfUnits(28), onOrder: [due(500, "2026-12-04")] })).toMatchObject({
      action: "on-its-way",
      shortFrom: "2026-11-27",
      sentence: "Likely gone by 27 Nov, before 500 sheets come 4 Dec; an order placed today comes 2 Dec.",
    });
  });

  it("asks after what should have come", () => {
    const row = outlook({ onOrder: [due(500, "2026-11-20")] });
    expect(row.sentence).toBe("500 sheets were due 20 Nov: ask where they are.");
  });

  it("does not count what comes after the protection interval against the reorder point", () => {
    expect(outlook({ onOrder: [due(500, "2027-01-20")] }).action).toBe("order-this-week");
  });

  it("has no use when nothing was used in 26 weeks", () => {
    const useByDay = [{ day: day("2026-01-06"), amount: amountOfUnits(98) }];
    const row = outlook({ useByDay, forecast: null });
    expect(row).toMatchObject({
      action: "no-use",
      usePerWeek: null,
      reorderPoint: null,
      sentence: "Not used in 26 weeks. 174 sheets on hand.",
    });
  });

  it("on the first day of a shop asks for a count, and says no use when there is one", () => {
    const first = { useByDay: [], firstDay: null, forecast: null };
    expect(outlook({ ...first, onHand: null })).toMatchObject({
      action: "count",
      sentence: "Never counted: count this to get a date. No use recorded yet.",
    });
    expect(outlook(first)).toMatchObject({
      action: "no-use",
      sentence: "No use recorded yet. 174 sheets on hand.",
    });
  });

  it("asks for a count when the book is below zero", () => {
    expect(outlook({ onHand: amountOfUnits(-3) })).toMatchObject({
      action: "count",
      carefulRunOutDate: null,
      suggestedPacks: null,
      sentence: "The book says −3 sheets: count this to get a date. About 98 sheets a week are used.",
    });
  });

  it("says today for what cannot last until a delivery", () => {
    expect(outlook({ onHand: amountOfUnits(28) }).sentence).toBe(
      "Order today: likely gone by 27 Nov, an order placed today comes 2 Dec.",
    );
    expect(outlook({ onHand: amount(0) }).sentence).toBe(
      "Order today: none left by the book, an order placed today comes 2 Dec.",
    );
    expect(outlook({ onHand: amountOfUnits(100) }).sentence).toBe(
      "Order today: lasts until 3 Dec, an order placed today comes 2 Dec.",
    );
  });

  it("explains each step from the weeks to the position", () => {
    expect(outlook({}).explanation.map((line) => line.label)).toEqual([
      "Used in the last weeks",
      "Use a week",
      "Lead time",
      "Expected use",
      "Typical error",
      "Reorder point",
      "Safety stock",
      "By the textbook",
      "Position",
    ]);
  });
});
