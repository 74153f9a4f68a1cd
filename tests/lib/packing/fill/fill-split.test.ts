import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockVolume } from "#lib/packing/block";
import { fillSplit } from "#lib/packing/fill/fill-split";
import { inches } from "../bench-shop";

const cube = (side: number) => ({ lengthUm: inches(side), widthUm: inches(side), heightUm: inches(side) });
const eight = { block: cube(8), ml: blockVolume(cube(8)) };
const CUBIC_INCH = 16.387064;

describe("fillSplit", () => {
  // Computed: 12 x 12 x 2 below and above, (12² - 8²) x 8 beside.
  it("splits the void round an 8 in cube in a 12 in cube into 288, 640 and 288 cubic inches", () => {
    const { baseMl, sidesMl, topMl } = fillSplit(cube(12), eight, inches(2));
    expect([baseMl, sidesMl, topMl].map((ml) => Math.round(ml / CUBIC_INCH))).toEqual([288, 640, 288]);
  });

  it("gives the top what the base leaves", () => {
    const { baseMl, topMl } = fillSplit(cube(12), eight, inches(3));
    expect([baseMl, topMl].map((ml) => Math.round(ml / CUBIC_INCH))).toEqual([432, 144]);
    expect(fillSplit(cube(12), eight, inches(9)).topMl).toBe(0);
  });

  it("adds up to inside less load", () => {
    const side = fc.integer({ min: 10_000, max: 300_000 });
    const spare = fc.nat(200_000);
    fc.assert(
      fc.property(side, side, side, spare, spare, fc.nat(300_000), (l, w, h, wide, high, baseUm) => {
        const block = { lengthUm: l, widthUm: w, heightUm: h };
        const inside = { lengthUm: l + wide, widthUm: w, heightUm: h + high };
        const load = { block, ml: blockVolume(block) };
        const { baseMl, sidesMl, topMl } = fillSplit(inside, load, baseUm);
        expect(baseMl + sidesMl + topMl).toBeCloseTo(blockVolume(inside) - load.ml, 6);
        expect(Math.min(baseMl, sidesMl, topMl)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("refuses a load that does not fit, and a base below zero", () => {
    expect(() => fillSplit(cube(7), eight, 0)).toThrow(RangeError);
    expect(() => fillSplit(cube(12), eight, -1)).toThrow(RangeError);
  });
});
