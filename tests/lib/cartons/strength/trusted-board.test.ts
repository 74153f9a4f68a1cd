import { describe, expect, it } from "vitest";
import { trustOf, USUAL_TRUST } from "#lib/cartons/strength/trusted-board";

describe("trustOf", () => {
  it("takes new board as rated, and reused board as a guess below it", () => {
    expect(trustOf("new")).toEqual({ percent: 100, isGuess: false });
    expect(trustOf("reused")).toEqual({ percent: USUAL_TRUST.reusedPercent, isGuess: true });
    expect(USUAL_TRUST.reusedPercent).toBeLessThan(100);
  });

  it("takes the shop's own settings", () => {
    expect(trustOf("new", { newPercent: 50, reusedPercent: 40 })).toEqual({ percent: 50, isGuess: true });
  });
});
