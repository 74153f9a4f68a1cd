import { describe, expect, it } from "vitest";
import { blockAround, blockVolume } from "#lib/packing/block";

const litre = { lengthUm: 100_000, widthUm: 100_000, heightUm: 100_000 };

describe("blockVolume", () => {
  it("is a litre for a cube of ten centimetres", () => {
    expect(blockVolume(litre)).toBe(1000);
  });

  it("refuses a side below zero", () => {
    expect(() => blockVolume({ ...litre, widthUm: -1 })).toThrow(RangeError);
  });
});

describe("blockAround", () => {
  it("adds the thickness on both sides of each side", () => {
    expect(blockAround({ lengthUm: 100, widthUm: 80, heightUm: 60 }, 5)).toEqual({
      lengthUm: 110,
      widthUm: 90,
      heightUm: 70,
    });
  });

  it("refuses a thickness below zero", () => {
    expect(() => blockAround(litre, -1)).toThrow(RangeError);
  });
});
