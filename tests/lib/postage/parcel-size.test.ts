import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthAsTyped, longestFirst, parcelSize, sidesIn, sidesText } from "#lib/postage/parcel-size";
import { compareRatios, ratio, ratioNumber } from "#lib/postage/ratio";
import { micrometres } from "#lib/units/length";
import { exact, sized, typed } from "./rate-card-fixture";

describe("outside sizes of a parcel", () => {
  it("are read back as a ruler gave them: 64ths and thousandths of an inch, tenths of a centimetre", () => {
    const inches = sidesIn(sized("12 1/16 x 12.203 x 7 3/64 in"), "in");
    expect(
      inches.map((side, at) => compareRatios(side, exact(["12 1/16", "12.203", "7 3/64"][at] ?? ""))),
    ).toEqual([0, 0, 0]);
    expect(sidesIn(sized("45 x 35.5 x 16 cm"), "cm").map(ratioNumber)).toEqual([45, 35.5, 16]);
  });

  it("measured in centimetres are exact in inches", () => {
    expect(ratioNumber(sidesIn(sized("30.48 x 20 x 10 cm"), "in")[0])).toBe(12);
  });

  it("move by no more than half a micrometre when they are read back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3_000_000 }), (um) => {
        const size = parcelSize([um, um, um].map(micrometres), null, "box");
        const [side] = sidesIn(size, "in");
        expect(Math.abs(ratioNumber(side) * 25_400 - um)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
    );
  });

  it("are sorted with the longest first, in whatever order they come", () => {
    const sides = fc.tuple(fc.bigInt(1n, 9n), fc.bigInt(1n, 9n), fc.bigInt(1n, 9n));
    fc.assert(
      fc.property(sides, ([a, b, c]) => {
        const sorted = longestFirst([ratio(a), ratio(b), ratio(c)]).map(ratioNumber);
        expect(sorted).toEqual([a, b, c].map(Number).toSorted((x, y) => y - x));
      }),
    );
  });

  it("are three, each above zero", () => {
    expect(() => parcelSize([micrometres(1), micrometres(2)], null, "box")).toThrow("three sides above 0");
    expect(() => parcelSize([1, 2, 0].map(micrometres), null, "box")).toThrow(RangeError);
  });

  it("are written with their unit", () => {
    expect(sidesText([ratio(13n), ratio(12n), ratio(12n)], "in")).toBe("13 × 12 × 12 in");
  });
});

describe("a length as typed", () => {
  it("is exact where its micrometres are not whole", () => {
    expect(compareRatios(lengthAsTyped(typed("1/16", "in")), exact("1587.5"))).toBe(0);
  });
});
