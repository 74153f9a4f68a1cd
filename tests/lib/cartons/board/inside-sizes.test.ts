import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardBetween, insideSizes } from "#lib/cartons/board/inside-sizes";
import { cartonOutside } from "#lib/packing/carton-outside";

const side = fc.integer({ min: 1, max: 2_000_000 });
const block = fc.record({ lengthUm: side, widthUm: side, heightUm: side });
const board = fc.integer({ min: 1, max: 15_000 });
const cube = { lengthUm: 304_800, widthUm: 304_800, heightUm: 304_800 };

describe("insideSizes", () => {
  it("is the way back from the outside, which is never smaller", () => {
    fc.assert(
      fc.property(block, board, (inside, boardUm) => {
        const outside = cartonOutside(inside, boardUm);
        expect(outside.lengthUm).toBeGreaterThanOrEqual(inside.lengthUm);
        expect(outside.widthUm).toBeGreaterThanOrEqual(inside.widthUm);
        expect(outside.heightUm).toBeGreaterThanOrEqual(inside.heightUm);
        expect(insideSizes(outside, boardUm)).toEqual({ kind: "sizes", inside });
      }),
    );
  });

  it("names the side on which the board leaves no room", () => {
    expect(insideSizes({ ...cube, heightUm: 16_000 }, 4000)).toEqual({ kind: "noRoom", side: "height" });
    expect(insideSizes({ ...cube, widthUm: 0 }, 0)).toEqual({ kind: "noRoom", side: "width" });
    expect(insideSizes({ ...cube, heightUm: 16_001 }, 4000).kind).toBe("sizes");
  });

  it("refuses board below zero", () => {
    expect(() => insideSizes(cube, -1)).toThrow(RangeError);
  });
});

describe("boardBetween", () => {
  it("tells the board from both sizes", () => {
    fc.assert(
      fc.property(block, board, (inside, boardUm) => {
        expect(boardBetween(inside, cartonOutside(inside, boardUm))).toEqual({
          kind: "board",
          leastUm: boardUm,
          mostUm: boardUm,
        });
      }),
    );
  });

  it("says by how much its sides differ", () => {
    const outside = { lengthUm: 312_800, widthUm: 310_800, heightUm: 320_800 };
    expect(boardBetween(cube, outside)).toEqual({ kind: "board", leastUm: 3000, mostUm: 4000 });
  });

  it("names the side that cannot be", () => {
    const outside = cartonOutside(cube, 4000);
    expect(boardBetween(cube, { ...outside, widthUm: cube.widthUm })).toEqual({
      kind: "insideNotSmaller",
      side: "width",
    });
    expect(boardBetween({ ...cube, lengthUm: 0 }, outside)).toEqual({ kind: "notAboveZero", side: "length" });
    expect(boardBetween(cube, { ...outside, heightUm: 400_000 })).toEqual({
      kind: "tooThick",
      side: "height",
    });
  });
});
