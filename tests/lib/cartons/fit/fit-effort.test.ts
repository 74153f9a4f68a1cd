import { describe, expect, it } from "vitest";
import { MOST_LOOKS, QUICK_EFFORT, USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";

describe("effort", () => {
  it("is counted in work, the quick one a small part of the usual", () => {
    expect(QUICK_EFFORT.looks * 10).toBeLessThanOrEqual(USUAL_EFFORT.looks);
    expect(USUAL_EFFORT.looks).toBeLessThan(MOST_LOOKS);
    expect(Object.values({ ...USUAL_EFFORT, MOST_LOOKS }).every(Number.isSafeInteger)).toBe(true);
  });
});
