import { describe, expect, it } from "vitest";
import { nanogramsOf } from "#lib/postage/exact-mass";
import type { StepHit } from "#lib/postage/step-for";
import { stepWords } from "#lib/postage/step-words";
import { plainBand, stepUpTo, typed } from "./rate-card-fixture";

const band = plainBand([stepUpTo("15.999", "oz", [824])]);
const step: StepHit = {
  band,
  bandAt: 0,
  stepAt: 0,
  further: 0,
  upToNg: nanogramsOf(typed("15.999", "oz")),
};

describe("a step in words", () => {
  it("keeps the weight as the card gives it", () => {
    expect(stepWords(step)).toBe("up to 15.999 oz");
    expect(stepWords({ ...step, band: { ...band, name: "Small parcel" } })).toBe(
      "Small parcel, up to 15.999 oz",
    );
  });

  it("tells further units in the unit of the last step", () => {
    const further = { ...step, further: 2, upToNg: nanogramsOf(typed("17.999", "oz")) };
    expect(stepWords(further)).toBe("up to 17.999 oz");
  });

  it("refuses a step that the band does not have", () => {
    expect(() => stepWords({ ...step, stepAt: 1 })).toThrow(RangeError);
  });
});
