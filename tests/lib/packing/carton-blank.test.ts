import { describe, expect, it } from "vitest";
import { cartonBlank } from "#lib/packing/carton-blank";

describe("cartonBlank", () => {
  it("is 50 by 24 in for a cube of 12 in", () => {
    const cube = { lengthUm: 304_800, widthUm: 304_800, heightUm: 304_800 };
    expect(cartonBlank(cube) / 25_400 ** 2).toBe(1200);
  });

  it("refuses a carton without a side", () => {
    expect(() => cartonBlank({ lengthUm: 304_800, widthUm: 0, heightUm: 304_800 })).toThrow(RangeError);
  });
});
