import { describe, expect, it } from "vitest";
import { boxInBox, leastOuter } from "#lib/packing/fill/box-in-box";
import { inches } from "../bench-shop";

const cube = (side: number) => ({ lengthUm: inches(side), widthUm: inches(side), heightUm: inches(side) });
const asked = { gapUm: inches(1), thisSideUp: true };

describe("boxInBox", () => {
  // Computed: 10³ - 8³ = 488 and 12³ - 8³ = 1216 cu in, by nominal sizes.
  it.each([
    [10, 488, 1],
    [12, 1216, 2],
  ])("leaves in a cube of %s in %s cubic inches and %s in all round one of 8 in", (side, void_, gap) => {
    const room = boxInBox({ inside: cube(8), boardUm: 0 }, cube(side), asked);
    expect(room.kind).toBe("fits");
    expect(room.voidMl / 16.387064).toBeCloseTo(void_, 6);
    expect(room.leavesUm).toBe(inches(gap));
  });

  it("is tighter by the board of the inner carton, most in height", () => {
    const room = boxInBox({ inside: cube(8), boardUm: 4000 }, cube(10), asked);
    expect([room.kind, room.tightest, room.leavesUm]).toEqual(["too-tight", "height", inches(1) - 8000]);
  });

  it("lays the inner carton down only where it may be", () => {
    const tall = { inside: { lengthUm: inches(6), widthUm: inches(6), heightUm: inches(12) }, boardUm: 0 };
    const flat = { lengthUm: inches(14), widthUm: inches(8), heightUm: inches(8) };
    expect(boxInBox(tall, flat, asked).kind).toBe("does-not-fit");
    expect(boxInBox(tall, flat, { ...asked, thisSideUp: false }).kind).toBe("fits");
  });
});

describe("leastOuter", () => {
  // By hand: board of 1/8 in makes 8 in into 8 1/4 in flat and 8 1/2 in high; 1 in of gap on both sides adds 2 in.
  it("adds two walls or four flaps and the gap on both sides", () => {
    const inch = 25_400;
    const board = inch / 8;
    expect(leastOuter({ inside: cube(8), boardUm: board }, inch)).toEqual({
      lengthUm: 10.25 * inch,
      widthUm: 10.25 * inch,
      heightUm: 10.5 * inch,
    });
  });

  it("is the smallest that fits: a hair less is too tight", () => {
    const inner = { inside: cube(8), boardUm: 4_000 };
    const least = leastOuter(inner, asked.gapUm);
    expect(boxInBox(inner, least, asked).kind).toBe("fits");
    expect(boxInBox(inner, { ...least, heightUm: least.heightUm - 2 }, asked).kind).toBe("too-tight");
  });
});
