import { describe, expect, it } from "vitest";
import { less, trialVerdict } from "#lib/replenishment/trial/trial-verdict";

describe("the verdict", () => {
  it("takes a difference beyond two standard errors, and nothing else, for one", () => {
    expect(less({ mean: -3, standardError: 1 })).toBe("tried");
    expect(less({ mean: 3, standardError: 1 })).toBe("present");
    expect(less({ mean: 1.9, standardError: 1 })).toBe("alike");
    expect(less({ mean: 1e-9, standardError: 0 })).toBe("alike");
    expect(less({ mean: 5, standardError: Infinity })).toBe("alike");
    const verdict = { cost: { mean: -3, standardError: 1 }, daysOut: { mean: 1, standardError: 0.1 } };
    expect(trialVerdict(verdict)).toEqual({ cheaper: "tried", safer: "present" });
  });
});
