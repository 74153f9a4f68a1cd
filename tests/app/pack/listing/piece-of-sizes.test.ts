import { describe, expect, it } from "vitest";
import { pieceOfSizes } from "#app/pack/listing/piece-of-sizes.ts";
import { bodyBlock } from "#lib/packing/piece/piece-block";
import { pieceProblems } from "#lib/packing/piece/piece-problems";

const CM = 10_000;

describe("a piece of which only the sizes are known", () => {
  it("is as wide all round as at its widest where it is round, and hollow", () => {
    const piece = pieceOfSizes("round", [12 * CM, 9 * CM, 10 * CM]);
    expect(piece.body).toEqual({ kind: "cylinder", acrossUm: 12 * CM, heightUm: 10 * CM });
    expect(piece.hollows).toHaveLength(1);
  });

  it("has its least size as its thickness where it is flat, in whichever order they are typed", () => {
    const tile = { kind: "flat", acrossUm: 20 * CM, longUm: 30 * CM, thickUm: 2 * CM };
    expect(pieceOfSizes("flat", [20 * CM, 2 * CM, 30 * CM]).body).toEqual(tile);
    expect(pieceOfSizes("flat", [2 * CM, 27 * CM]).body).toEqual({
      kind: "flat",
      acrossUm: 27 * CM,
      longUm: null,
      thickUm: 2 * CM,
    });
  });

  it("fills the sizes typed in every form, and is a piece that can be packed", () => {
    for (const form of ["round", "box", "flat", "stemmed"] as const) {
      const piece = pieceOfSizes(form, [8 * CM, 8 * CM, 20 * CM]);
      const { lengthUm, widthUm, heightUm } = bodyBlock(piece.body);
      expect([lengthUm, widthUm, heightUm].sort((a, b) => a - b)).toEqual([8 * CM, 8 * CM, 20 * CM]);
      expect(pieceProblems(piece)).toEqual([]);
    }
  });

  it("refuses a block with two sizes", () => {
    expect(() => pieceOfSizes("box", [1, 2])).toThrow(RangeError);
  });
});
