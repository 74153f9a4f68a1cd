import { describe, expect, it } from "vitest";
import { explanation, methodWords } from "#lib/replenishment/explanation";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const values = [18, 22, 18, 22].map((units) => amountOfUnits(units));
const history = { kind: "weeks", values, recentUse: amountOfUnits(80) } as const;
const plan = protectionPlan({
  history,
  today,
  leadTimeDays: 7,
  reviewDays: 7,
  serviceLevel: 0.95,
  calendar: [],
});
const question = {
  unit: "sheet",
  plan,
  history,
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

  it("shows the factor, the error and the safety stock they make: 2.35 × 2.3094 × √3 = 9.41", () => {
    expect(lineOf("Service level")?.note).toBe("2.35 typical errors are kept beside the expected use.");
    expect(lineOf("Typical error")?.value).toBe("4 sheets");
    expect(lineOf("Safety stock")?.value).toBe("9.4 sheets");
    expect(lineOf("Reorder point")?.value).toBe("49 sheets");
  });

  it("shows averages whole, and booked amounts to the eighth", () => {
    const weeks = [635.875, 635.875, 635.875, 635.875].map((units) => amountOfUnits(units));
    const booked = { kind: "weeks", values: weeks, recentUse: amountOfUnits(2_543.5) } as const;
    const steady = protectionPlan({
      history: booked,
      today,
      leadTimeDays: 7,
      reviewDays: 7,
      serviceLevel: 0.95,
      calendar: [],
    });
    const of = (label: string) =>
      lineOf(label, {
        history: booked,
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

  it("has one line for each label", () => {
    const labels = explanation(question).map((line) => line.label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});

describe("words for the method", () => {
  it("name the average and its weeks", () => {
    expect(methodWords({ kind: "first-days", days: 3 })).toBe("Use of the first 3 days, taken to a week");
    expect(methodWords({ kind: "too-few-weeks", method: { kind: "simple", window: 1 } })).toBe(
      "Average of all there is, 1 week",
    );
    expect(methodWords({ kind: "compared", method: { kind: "weighted", window: 8 }, tried: [] })).toBe(
      "Weighted average of the last 8 weeks, the newest heaviest",
    );
  });
});
