import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { massAsStored, massIn, milligramsOf, nanogramsOf, nanogramsPer } from "#lib/postage/exact-mass";
import { compareRatios, ratioNumber } from "#lib/postage/ratio";
import type { MassUnit } from "#lib/postage/typed-measure";
import { milligrams } from "#lib/units/mass";
import { typed, weighed } from "./rate-card-fixture";

describe("a mass held against a limit", () => {
  it("of 16 oz is one pound; 15.999 oz is not", () => {
    const pound = nanogramsOf(typed("1", "lb"));
    expect(compareRatios(nanogramsOf(typed("16", "oz")), pound)).toBe(0);
    expect(compareRatios(nanogramsOf(typed("15.999", "oz")), pound)).toBe(-1);
    expect(compareRatios(weighed("16 oz").ng, nanogramsOf(typed("15.999", "oz")))).toBe(1);
  });

  it("stored to the milligram is not over the limit that was typed, whichever way it was rounded", () => {
    const numbers = fc.integer({ min: 1, max: 70_000 }).map((count) => String(count / 1_000));
    const units = fc.constantFrom<MassUnit[]>("oz", "lb", "g", "kg");
    fc.assert(
      fc.property(numbers, units, (text, unit) => {
        const limit = nanogramsOf(typed(text, unit));
        expect(compareRatios(weighed(`${text} ${unit}`).ng, limit)).not.toBe(1);
      }),
    );
  });

  it("stored a milligram above a limit is over it", () => {
    const { ng } = massAsStored(milligrams(141_749), { measures: "imperial" });
    expect(compareRatios(ng, nanogramsOf(typed("5", "oz")))).toBe(1);
    expect(
      compareRatios(
        massAsStored(milligrams(2_000_001), { measures: "metric" }).ng,
        nanogramsOf(typed("2", "kg")),
      ),
    ).toBe(1);
  });

  it("is shown as typed, or in the shop's measures", () => {
    expect(massAsStored(milligrams(141_748), { measures: "imperial" }).text).toBe("5 oz");
    expect(massAsStored(milligrams(830_000), { measures: "metric" }).text).toBe("830 g");
    expect(weighed("2 lb 15 oz").text).toBe("2 lb 15 oz");
  });

  it("of nothing is nothing", () => {
    expect(ratioNumber(massAsStored(milligrams(0), { measures: "metric" }).ng)).toBe(0);
  });

  // The pound of 0.45359237 kg, international agreement of 1959.
  it("is told in another unit exactly", () => {
    expect(nanogramsPer("lb")).toBe(453_592_370_000n);
    const pound = nanogramsOf(typed("1", "lb"));
    expect(ratioNumber(massIn(pound, "oz"))).toBe(16);
    expect(ratioNumber(massIn(pound, "kg"))).toBe(0.45359237);
    expect(milligramsOf(nanogramsOf(typed("1", "oz")))).toBe(28_349.523125);
  });
});
