import { describe, expect, it } from "vitest";
import { USUAL_CUT } from "#lib/cartons/choice/cut-terms";

describe("how a carton is usually cut down", () => {
  // From memory: cutting a carton down costs three to six minutes.
  it("takes three to six minutes, in steps of whole millimetres", () => {
    expect(USUAL_CUT.minutes).toBeGreaterThanOrEqual(3);
    expect(USUAL_CUT.minutes).toBeLessThanOrEqual(6);
    expect(USUAL_CUT.stepUm % 1_000).toBe(0);
  });
});
