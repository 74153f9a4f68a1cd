import { describe, expect, it } from "vitest";
import { explanation } from "#lib/replenishment/explanation";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { supplyForecast } from "./supply-forecast";

const today = day("2026-11-25");
const weeksOf = (units: readonly number[]) =>
  units.map((each, week) => ({
    weekStart: addDays(day("2026-10-26"), 7 * week),
    amount: amountOfUnits(each),
    closed: false,
  }));
const spread = { perUse: 2, dispersions: [0.05], whole: false };
const plan = protectionPlan({
  forecast: supplyForecast(20, { spread }),
  today,
  leadTimeDays: 7,
  reviewDays: 7,
  serviceLevel: 0.95,
  calendar: [],
});
const question = {
  unit: "sheet",
  plan,
  weeks: weeksOf([18, 22, 18, 22]),
  correction: { kind: "none" },
  onHand: amountOfUnits(61),
  countedOn: day("2026-11-20"),
  onOrder: amountOfUnits(150),
  position: amountOfUnits(161),
  serviceLevel: 0.95,
  reviewDays: 7,
  today,
  supplierName: "Marram",
} as const;
const lineOf = (label: string, more: Partial<Parameters<typeof explanation>[0]> = {}) =>
  explanation({ ...question, ...more }).find((line) => line.label === label);

describe("explanation", () => {
  it("lists the weekly use, oldest first", () => {
    expect(lineOf("Used in the last weeks")?.value).toBe("18 sheets, 22 sheets, 18 sheets, 22 sheets");
  });

  it("shows the expected use as a sum to do by hand", () => {
    expect(lineOf("Expected use")).toEqual({
      label: "Expected use",
      value: "40 sheets",
      note: "20 sheets a week × 14 ÷ 7.",
    });
  });

  it("shows the error by its formula: √(2 × 40 + 0.05 × 40²) = 12.6", () => {
    expect(lineOf("Typical error")?.value).toBe("12.6 sheets");
    expect(lineOf("Typical error")?.note).toContain("√(2 sheets × 40 sheets + 0.05 × 40 sheets²)");
  });

  it("shows the reorder point as a quantile, the safety stock as what it holds above the expected use", () => {
    // Gamma with mean 40 and variance 160: shape 10, scale 4; its 95 % point is 62.82 (chi-squared with 20 degrees, 31.41, twice).
    expect(lineOf("Reorder point")?.value).toBe("63 sheets");
    expect(lineOf("Reorder point")?.note).toContain("not exceeded 95 times in 100");
    expect(lineOf("Safety stock")?.value).toBe("23 sheets");
  });

  it("shows the textbook's way beside it: 40 + 1.64 × 12.65 = 60.8", () => {
    expect(lineOf("By the textbook")).toMatchObject({
      value: "61 sheets",
      note: "To compare, as errors were normal: 40 sheets + 1.64 × 12.6 sheets.",
    });
  });

  it("shows averages whole, and booked amounts to the eighth", () => {
    const steady = protectionPlan({
      forecast: supplyForecast(635.875),
      today,
      leadTimeDays: 7,
      reviewDays: 7,
      serviceLevel: 0.95,
      calendar: [],
    });
    const of = (label: string) =>
      lineOf(label, {
        weeks: weeksOf([635.875, 635.875, 635.875, 635.875]),
        plan: steady,
        onHand: amountOfUnits(61.125),
        position: amountOfUnits(61.125),
      })?.value;
    expect(of("Used in the last weeks")).toBe("635⅞ sheets, 635⅞ sheets, 635⅞ sheets, 635⅞ sheets");
    expect(of("Use a week")).toBe("636 sheets");
    // 2 weeks of 635⅞ are 1,271¾.
    expect(of("Expected use")).toBe("1,272 sheets");
    expect(of("Position")).toBe("61⅛ sheets");
  });

  it("says what of the position is on the shelf and what comes in time", () => {
    expect(lineOf("Position")).toEqual({
      label: "Position",
      value: "161 sheets",
      note: "61 sheets on hand, last counted 20 Nov, 100 sheets on order within the interval; another 50 sheets after it.",
    });
    expect(lineOf("Position", { onHand: null, position: null })?.value).toBe("not known");
  });

  it("shows what the counts changed", () => {
    const correction = {
      kind: "corrected",
      factor: 1.25,
      differences: 2,
      differenceSum: -amountOfUnits(20),
      recordedUse: amountOfUnits(80),
    } as const;
    expect(lineOf("Corrected by counts", { correction })).toMatchObject({
      value: "× 1.25",
      note: expect.stringContaining(
        "2 counts in 26 weeks found 20 sheets missing beside 80 sheets recorded.",
      ),
    });
  });

  it("leaves weeks mostly closed out of the list", () => {
    const weeks = weeksOf([18, 22]).map((week, index) => ({ ...week, closed: index === 0 }));
    expect(lineOf("Used in the last weeks", { weeks })?.value).toBe("22 sheets");
  });

  it("has one line for each label", () => {
    const labels = explanation(question).map((line) => line.label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});
