import { describe, expect, it } from "vitest";
import { cartonOutside } from "#lib/packing/carton-outside";

const cube = { lengthUm: 304_800, widthUm: 304_800, heightUm: 304_800 };

describe("cartonOutside", () => {
  it("adds two walls to length and width and four flaps to the height", () => {
    expect(cartonOutside(cube, 4000)).toEqual({ lengthUm: 312_800, widthUm: 312_800, heightUm: 320_800 });
  });

  it("refuses board below zero", () => {
    expect(() => cartonOutside(cube, -1)).toThrow(RangeError);
  });
});
