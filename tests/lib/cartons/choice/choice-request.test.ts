import { describe, expect, it } from "vitest";
import { refuseWrongRequest } from "#lib/cartons/choice/choice-request";
import { CUBIC_INCH_ML, carton, MUG, mugRequest } from "./mug-bench";

const cube8 = carton("cube-8", [8, 8, 8], 80);
const refusal =
  (more: Parameters<typeof mugRequest>[1], candidates = [cube8]) =>
  () =>
    refuseWrongRequest(mugRequest(candidates, more));

describe("a request for a carton", () => {
  it("passes as it is usually made", () => {
    expect(refusal({})).not.toThrow();
    expect(refusal({ load: { ...MUG, ml: 5.5 * 5.5 * 4.75 * CUBIC_INCH_ML * (1 + 1e-12) } })).not.toThrow();
  });

  it("is refused where a carton stands in it twice", () => {
    expect(refusal({}, [cube8, cube8])).toThrow(/each carton once, got cube-8 twice/);
  });

  it("is refused where the load takes more than its blocks, or weighs less than nothing", () => {
    expect(refusal({ load: { ...MUG, ml: 150 * CUBIC_INCH_ML } })).toThrow(/at most its blocks/);
    expect(refusal({ load: { ...MUG, massMg: -1 } })).toThrow(/a mass from zero/);
  });

  it("is refused where a setting is below zero, or a cut takes no time or no whole step", () => {
    expect(refusal({ minuteValue: -1 })).toThrow(/settings from zero, got -1/);
    expect(refusal({ stockMarginPerMille: Number.NaN })).toThrow(/settings from zero/);
    expect(refusal({ cut: { minutes: 0, stepUm: 5_000 } })).toThrow(/above zero/);
    expect(refusal({ cut: { minutes: 5, stepUm: 0.5 } })).toThrow(/a whole step above zero/);
  });
});
