import { describe, expect, it } from "vitest";
import { guess } from "#lib/replenishment/guess";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import { day } from "#lib/units/day";

const planOf = (values: readonly number[]) =>
  protectionPlan({
    history: { kind: "weeks", values, recentUse: 10 },
    today: day("2026-11-25"),
    leadTimeDays: 7,
    reviewDays: 7,
    serviceLevel: 0.95,
    calendar: [],
  });

describe("what is guessed", () => {
  it("is nothing with four weeks and an offer", () => {
    expect(guess(planOf([10, 20, 10, 20]), true)).toBeNull();
  });

  it("is the use under four weeks", () => {
    expect(guess(planOf([10]), true)).toBe("the use comes from one week.");
  });

  it("is the lead time without an offer", () => {
    expect(guess(planOf([10, 20]), false)).toBe(
      "the use comes from 2 weeks; a lead time of 7 days is assumed, as there is no offer.",
    );
  });
});
