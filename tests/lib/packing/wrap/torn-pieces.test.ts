import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tornPieces } from "#lib/packing/wrap/torn-pieces";
import { inches } from "../bench-shop";

const need = (length: number, width: number) => ({
  lengthUm: inches(length),
  widthUm: inches(width),
  wishedWidthUm: inches(width),
  overlapUm: inches(2),
});
const roll = { widthUm: inches(12), pieceUm: inches(12) };

describe("tornPieces", () => {
  // Computed from the formula; a roll torn every 12 in is common practice.
  it.each([
    [32.6, 3],
    [49.7, 5],
    [36, 3],
  ])("of a strip of %s in are %s", (length, pieces) => {
    expect(tornPieces(need(length, 8.5), roll)).toEqual({ widths: 1, pieces, usedUm: inches(12 * pieces) });
  });

  it("lie side by side where the strip is wider than the roll, the last one halved", () => {
    expect(tornPieces(need(36, 14), roll)).toEqual({ widths: 1.5, pieces: 5, usedUm: inches(60) });
    expect(tornPieces(need(36, 20), roll)).toEqual({ widths: 2, pieces: 6, usedUm: inches(72) });
  });

  it("are whole ones for a narrow strip", () => {
    expect(tornPieces(need(12, 3), roll).pieces).toBe(1);
  });

  it("are none where a roll is cut, to the next half inch", () => {
    expect(tornPieces(need(32.6, 14), { ...roll, pieceUm: null })).toEqual({
      widths: 2,
      pieces: null,
      usedUm: inches(66),
    });
  });

  it("cover at least the strip, and never shrink as it grows", () => {
    const side = fc.integer({ min: 1, max: 2_000_000 });
    const perforation = fc.constantFrom(inches(12), inches(6), null);
    fc.assert(
      fc.property(side, side, fc.nat(500_000), perforation, (lengthUm, widthUm, more, pieceUm) => {
        const strip = { lengthUm, widthUm, wishedWidthUm: widthUm, overlapUm: 0 };
        const used = tornPieces(strip, { ...roll, pieceUm }).usedUm;
        expect(used * roll.widthUm).toBeGreaterThanOrEqual(lengthUm * widthUm);
        const longer = { ...strip, lengthUm: lengthUm + more };
        expect(tornPieces(longer, { ...roll, pieceUm }).usedUm).toBeGreaterThanOrEqual(used);
      }),
    );
  });

  it("refuses a roll without a width", () => {
    expect(() => tornPieces(need(1, 1), { widthUm: 0, pieceUm: null })).toThrow(RangeError);
  });
});
