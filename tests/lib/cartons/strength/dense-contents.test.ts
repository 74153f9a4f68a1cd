import { describe, expect, it } from "vitest";
import { densePressure } from "#lib/cartons/strength/dense-contents";
import { massOf, sidesOf } from "./packed-load";

// 60 lb a square foot of the smallest face, a national post's guide of 2002: tests/reference.
describe("densePressure", () => {
  it("takes the smallest face, in whatever order the sides come", () => {
    for (const sizes of ["12 x 12 x 20 in", "20 x 12 x 12 in", "12 x 20 x 12 in"]) {
      expect(densePressure(massOf("60 lb"), sidesOf(sizes))).toMatchObject({ isWithin: true });
      expect(densePressure(massOf("60 lb 0.01 oz"), sidesOf(sizes))).toMatchObject({ isWithin: false });
    }
  });
});
