import { describe, expect, it } from "vitest";
import { planSeconds } from "#app/purchase-plan/plan-seconds.ts";

describe("time for a plan", () => {
  it("is five seconds where nothing is set, else what is set", () => {
    expect(planSeconds(undefined)).toBe(5);
    expect(planSeconds("")).toBe(5);
    expect(planSeconds("0")).toBe(0);
    expect(planSeconds("1.5")).toBe(1.5);
  });

  it.each(["soon", "-1", "61"])("refuses %s, naming the setting", (text) => {
    expect(() => planSeconds(text)).toThrow(/WADDING_PLAN_SECONDS must be a number from 0 to 60/);
  });
});
