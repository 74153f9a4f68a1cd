import { describe, expect, it } from "vitest";
import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import { guess } from "#lib/replenishment/guess";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import { day } from "#lib/units/day";
import { onTime } from "./on-time";
import { supplyForecast } from "./supply-forecast";

const planOf = (changes: Partial<SupplyForecast>) =>
  protectionPlan({
    forecast: supplyForecast(10, changes),
    today: day("2026-11-25"),
    delivery: onTime(7),
    reviewDays: 7,
    goal: { kind: "cycles", level: 0.95 },
    coverWeeks: 6,
    calendar: [],
  });
const firstWeeks = (weeksSeen: number) => planOf({ method: "first weeks", weeksSeen });

describe("what is guessed", () => {
  it("is nothing with four weeks and an offer", () => {
    expect(guess(firstWeeks(4), true)).toBeNull();
    expect(guess(planOf({}), true)).toBeNull();
  });

  it("is the use under four weeks", () => {
    expect(guess(firstWeeks(0), true)).toBe("the use comes from the first days.");
    expect(guess(firstWeeks(1), true)).toBe("the use comes from one week.");
  });

  it("is what of the use still rests on the seller's guess", () => {
    const half = planOf({ method: "first weeks", weeksSeen: 2, guessedShare: 0.5 });
    expect(guess(half, true)).toBe("50 % of the use is your guess of parcels a week.");
    const all = planOf({ method: "first weeks", weeksSeen: 0, guessedShare: 1 });
    expect(guess(all, true)).toBe("all of the use is your guess of parcels a week.");
  });

  it("is the lead time without an offer", () => {
    expect(guess(firstWeeks(2), false)).toBe(
      "the use comes from 2 weeks; a lead time of 7 days is assumed, as there is no offer.",
    );
  });
});
