import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockVolume } from "#lib/packing/block";
import { cartonRoom, standingRoom, turnedBlocks } from "#lib/packing/fill/carton-room";
import { inches } from "../bench-shop";

const block = (length: number, width: number, height: number) => ({
  lengthUm: inches(length),
  widthUm: inches(width),
  heightUm: inches(height),
});
const load = (length: number, width: number, height: number) => ({
  block: block(length, width, height),
  ml: blockVolume(block(length, width, height)),
});
const side = fc.integer({ min: 10_000, max: 400_000 });
const blocks = fc.record({ lengthUm: side, widthUm: side, heightUm: side });

describe("turnedBlocks", () => {
  it("keeps the height of what must stay this side up", () => {
    expect(turnedBlocks(block(3, 2, 1), true)).toEqual([block(3, 2, 1), block(2, 3, 1)]);
  });

  it("finds all six ways else, the block as it is first", () => {
    const turned = turnedBlocks(block(3, 2, 1), false);
    expect(new Set(turned.map((each) => JSON.stringify(each))).size).toBe(6);
    expect(turned[0]).toEqual(block(3, 2, 1));
  });
});

describe("standingRoom", () => {
  it("says on which side it is tightest, and what it leaves there", () => {
    const room = standingRoom(block(12, 12, 12), load(8, 6, 9), inches(1));
    expect([room.kind, room.tightest, room.leavesUm]).toEqual(["fits", "height", inches(1.5)]);
  });

  it("refuses a clearance below zero and a load beyond its block", () => {
    expect(() => standingRoom(block(9, 9, 9), load(8, 8, 8), -1)).toThrow(RangeError);
    expect(() => standingRoom(block(9, 9, 9), { block: block(1, 1, 1), ml: 999 }, 0)).toThrow(RangeError);
  });
});

describe("cartonRoom", () => {
  // Computed: 12³ - 8³ = 1216 cu in.
  it("leaves 1216 cubic inches and 2 in all round an 8 in cube in a 12 in cube", () => {
    const room = cartonRoom(block(12, 12, 12), { ...load(8, 8, 8), thisSideUp: true }, inches(2));
    expect(room.kind).toBe("fits");
    expect(room.leavesUm).toBe(inches(2));
    expect(room.voidMl / 16.387064).toBeCloseTo(1216, 6);
  });

  it("is too tight where it leaves less than was asked for, and says how much", () => {
    const room = cartonRoom(block(8, 8, 8), { ...load(5, 5, 5), thisSideUp: true }, inches(2));
    expect([room.kind, room.leavesUm, room.askedUm]).toEqual(["too-tight", inches(1.5), inches(2)]);
  });

  it("does not fit where something is missing, and says how much on each side", () => {
    const room = cartonRoom(block(8, 8, 8), { ...load(9, 5, 5), thisSideUp: false }, 0);
    expect([room.kind, room.leavesUm, room.voidMl]).toEqual(["does-not-fit", inches(-0.5), 0]);
  });

  it("lays a bottle down unless it must stay this side up", () => {
    const bottle = load(4, 4, 12);
    const carton = block(14, 6, 6);
    expect(cartonRoom(carton, { ...bottle, thisSideUp: false }, inches(1)).kind).toBe("fits");
    expect(cartonRoom(carton, { ...bottle, thisSideUp: true }, inches(1)).kind).toBe("does-not-fit");
  });

  it("takes the best of all turns, as the sorted sides have it", () => {
    fc.assert(
      fc.property(blocks, blocks, (inside, packed) => {
        const sorted = (each: typeof inside) =>
          [each.lengthUm, each.widthUm, each.heightUm].sort((a, b) => a - b);
        const gaps = sorted(inside).map((size, index) => (size - (sorted(packed)[index] ?? 0)) / 2);
        const any = { block: packed, ml: 0, thisSideUp: false };
        expect(cartonRoom(inside, any, 0).leavesUm).toBe(Math.min(...gaps));
      }),
    );
  });
});
