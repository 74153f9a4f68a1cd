import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gridBlock, gridsOf } from "#lib/packing/set/grid-blocks";

describe("gridsOf", () => {
  it("stands two in three ways, in one tier first", () => {
    expect(gridsOf(2)).toEqual([
      { rows: 1, columns: 2, tiers: 1 },
      { rows: 2, columns: 1, tiers: 1 },
      { rows: 1, columns: 1, tiers: 2 },
    ]);
  });

  it("stands five in two rows of three as well, with a cell to spare", () => {
    expect(gridsOf(5)).toContainEqual({ rows: 2, columns: 3, tiers: 1 });
  });

  it("holds all pieces, and no row, column or tier for nothing", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), (pieces) => {
        const grids = gridsOf(pieces);
        expect(grids.length).toBeGreaterThan(0);
        for (const { rows, columns, tiers } of grids) {
          expect(rows * columns * tiers).toBeGreaterThanOrEqual(pieces);
          expect((rows - 1) * columns * tiers).toBeLessThan(pieces);
          expect(rows * (columns - 1) * tiers).toBeLessThan(pieces);
          expect(rows * columns * (tiers - 1)).toBeLessThan(pieces);
        }
      }),
    );
  });

  it("refuses half a piece", () => {
    expect(() => gridsOf(0.5)).toThrow(RangeError);
  });
});

describe("gridBlock", () => {
  it("adds pieces and the walls between them", () => {
    const block = { lengthUm: 100, widthUm: 80, heightUm: 60 };
    expect(gridBlock(block, { rows: 2, columns: 3, tiers: 1 }, 5)).toEqual({
      lengthUm: 310,
      widthUm: 165,
      heightUm: 60,
    });
  });
});
