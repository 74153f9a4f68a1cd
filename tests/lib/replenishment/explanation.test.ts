import { describe, expect, it } from "vitest";
import { explanation } from "#lib/replenishment/explanation";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import { type ProtectionPlanQuestion, protectionPlan } from "#lib/replenishment/protection-plan";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { onTime } from "./on-time";
import { supplyForecast } from "./supply-forecast";

const today = day("2026-11-25");
const weeksOf = (units: readonly number[]) =>
  units.map((each, week) => ({
    weekStart: addDays(day("2026-10-26"), 7 * week),
    amount: amountOfUnits(each),
    closed: false,
  }));
const spread = { perUse: 2, dispersions: [0.05], whole: false };
const planQuestion: ProtectionPlanQuestion = {
  forecast: supplyForecast(20, { spread }),
  today,
  delivery: onTime(7),
  reviewDays: 7,
  goal: { kind: "cycles", level: 0.95 },
  coverWeeks: 6,
  calendar: [],
};
const planOf = (changes: Partial<ProtectionPlanQuestion>) => protectionPlan({ ...planQuestion, ...changes });
const question = {
  unit: "sheet",
  plan: planOf({}),
  weeks: weeksOf([18, 22, 18, 22]),
  correction: { kind: "none" },
  onHand: amountOfUnits(61),
  countedOn: day("2026-11-20"),
  onOrder: amountOfUnits(150),
  position: amountOfUnits(161),
  today,
  supplierName: "Marram",
} as const;
const lineOf = (label: string, more: Partial<Parameters<typeof explanation>[0]> = {}) =>
  explanation({ ...question, ...more }).find((line) => line.label === label);

describe("explanation", () => {
  it("lists the weekly use, oldest first", () => {
    expect(lineOf("Used in the last weeks")?.value).toBe("18 sheets, 22 sheets, 18 sheets, 22 sheets");
  });

  it("says what is promised, and how the promise is kept", () => {
    expect(lineOf("Lead time")).toEqual({
      label: "Lead time",
      value: "7 days",
      note:
        "As a rule, and with 9 chances in 10: Marram, 7 days promised. How late it may be: 50 own deliveries count 100 %, " +
        "the promise the rest. An order placed at the next check, 2 Dec, comes about 9 Dec.",
    });
    const belief = latenessBelief([], { promisedDays: 7, orderedOn: today });
    const unknown = planOf({ delivery: { terms: plainTerms(7), belief } });
    expect(lineOf("Lead time", { plan: unknown })).toMatchObject({
      value: "7 to 9 days",
      note: expect.stringContaining("a guess until deliveries are recorded"),
    });
  });

  it("shows the expected use in two parts: 20 until the delivery, (60 + 20²) ÷ 40 = 11.5 unseen before", () => {
    // A week has mean 20 and variance 2 × 20 + 0.05 × 20² = 60: (60 + 400) / 40 = 11.5.
    expect(unitsOf(question.plan.expectedUse)).toBeCloseTo(31.5, 1);
    expect(lineOf("Expected use")?.value).toBe("31 sheets");
    expect(lineOf("Expected use")?.note).toContain(
      "20 sheets from the order until its delivery, and 11.5 sheets before",
    );
  });

  it("says in the goal's words what the reorder point does", () => {
    expect(lineOf("Reorder point")?.note).toContain("runs out at most once in 20 order cycles");
    expect(lineOf("Reorder point")?.note).toContain("in 95 of 100 order cycles");
    const share = planOf({ goal: { kind: "share", level: 0.98 } });
    expect(lineOf("Reorder point", { plan: share })?.note).toContain(
      "The least with which 98 of 100 needed are filled from stock",
    );
  });

  it("shows the textbook's way beside it: 40 + 1.64 × √(2 × 40 + 0.05 × 40²) = 60.8", () => {
    expect(lineOf("By the textbook")).toMatchObject({
      value: "61 sheets",
      note: expect.stringContaining("20 sheets × 14 ÷ 7 = 40 sheets, + 1.64 × 12.6 sheets."),
    });
  });

  it("shows averages whole, and booked amounts to the eighth", () => {
    const of = (label: string) =>
      lineOf(label, {
        weeks: weeksOf([635.875, 635.875, 635.875, 635.875]),
        plan: planOf({ forecast: supplyForecast(635.875) }),
        onHand: amountOfUnits(61.125),
        position: amountOfUnits(61.125),
      })?.value;
    expect(of("Used in the last weeks")).toBe("635⅞ sheets, 635⅞ sheets, 635⅞ sheets, 635⅞ sheets");
    expect(of("Use a week")).toBe("636 sheets");
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
});
