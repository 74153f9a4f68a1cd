import { describe, expect, it } from "vitest";
import { ratio } from "#lib/postage/ratio";
import { stepFor, stepLimits, stepPrice } from "#lib/postage/step-for";
import { minorUnits } from "#lib/units/money";
import { plainBand, stepUpTo, typed, weighed } from "./rate-card-fixture";

const beyond = { kind: "perFurther" as const, each: typed("500", "g"), prices: [minorUnits(120)] };
const band = plainBand([stepUpTo("1", "kg", [400]), stepUpTo("2", "kg", [650])], { beyond });
const at = (weight: string, of = band) => stepFor(of, 0, weighed(weight).ng);

describe("the step for a weight", () => {
  it("is the first that the weight is not over, then counts further units begun", () => {
    expect(
      ["1 kg", "1.001 kg", "2 kg", "2.001 kg", "2.6 kg"].map((weight) => [
        at(weight)?.stepAt,
        at(weight)?.further,
      ]),
    ).toEqual([
      [0, 0],
      [1, 0],
      [1, 0],
      [1, 1],
      [1, 2],
    ]);
    expect(at("2.6 kg")?.upToNg).toEqual(ratio(3_000_000_000_000n));
  });

  it("is none beyond the last where no more is carried, and in a band without steps", () => {
    expect(at("2.001 kg", { ...band, beyond: { kind: "notCarried" } })).toBeNull();
    expect(at("1 kg", plainBand([]))).toBeNull();
  });

  it("costs its price and that of the further units", () => {
    const step = at("2.6 kg");
    expect(step === null ? null : [stepPrice(step, 0), stepPrice(step, 1)]).toEqual([650 + 2 * 120, null]);
  });

  it("has its limits worked out once for each band", () => {
    expect(stepLimits(band)).toBe(stepLimits(band));
  });
});
