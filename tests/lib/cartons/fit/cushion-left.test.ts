import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cushionLeft } from "#lib/cartons/fit/cushion-left";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";

const MM = 1_000;
const cube = (mm: number) => ({ lengthUm: mm * MM, widthUm: mm * MM, heightUm: mm * MM });
const piece = (mm: number) => ({ block: cube(mm), upright: false });

describe("the cushion that a carton leaves", () => {
  it("is half of what a side has over the piece, in whole millimetres", () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 0, max: 90 }), (side, over) => {
        expect(cushionLeft([piece(side)], cube(side + over), 50 * MM, QUICK_EFFORT)).toBe(
          Math.min(50, Math.floor(over / 2)) * MM,
        );
      }),
    );
  });

  it("is what was asked where there is more, to the micrometre", () => {
    expect(cushionLeft([piece(100)], cube(300), 50_800, QUICK_EFFORT)).toBe(50_800);
  });

  it("is none where the pieces just fit, and null where they do not", () => {
    expect(
      cushionLeft([piece(100), piece(100)], { ...cube(100), lengthUm: 200 * MM }, 20 * MM, QUICK_EFFORT),
    ).toBe(0);
    expect(cushionLeft([piece(101)], cube(100), 20 * MM, QUICK_EFFORT)).toBeNull();
  });

  it("is refused below zero", () => {
    expect(() => cushionLeft([piece(100)], cube(100), -1, QUICK_EFFORT)).toThrow(RangeError);
  });
});
