import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { QUICK_EFFORT, USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { smallestHeight } from "#lib/cartons/fit/smallest-height";
import { askedQuestions, NO_CLEARANCE, piece, uprightPiece } from "./small-question";

const base = (lengthUm: number, widthUm: number) => ({
  base: { lengthUm, widthUm },
  clearance: NO_CLEARANCE,
});

describe("the smallest height", () => {
  it("is that of the pieces beside each other where the base holds them", () => {
    const pieces = [piece(6, 6, 6), piece(6, 6, 6)];
    expect(smallestHeight({ ...base(12, 6), pieces }, USUAL_EFFORT)).toMatchObject({
      kind: "exact",
      heightUm: 6,
    });
    expect(smallestHeight({ ...base(11, 6), pieces }, USUAL_EFFORT)).toMatchObject({
      kind: "exact",
      heightUm: 12,
    });
  });

  it("lays down what may lie, and counts the clearance", () => {
    const clearance = { wallsUm: 1, baseUm: 2, topUm: 3 };
    const asked = { base: { lengthUm: 12, widthUm: 7 }, clearance };
    expect(smallestHeight({ ...asked, pieces: [piece(2, 3, 10)] }, USUAL_EFFORT)).toMatchObject({
      heightUm: 7,
    });
    expect(smallestHeight({ ...asked, pieces: [uprightPiece(2, 3, 10)] }, USUAL_EFFORT)).toMatchObject({
      heightUm: 15,
    });
  });

  it("is that of a tower where nothing goes beside anything", () => {
    const pieces = [
      piece(9, 9, 9),
      piece(10, 10, 1),
      piece(8, 9, 9),
      ...Array.from({ length: 6 }, () => piece(6, 7, 8)),
    ];
    const asked = { ...base(10, 10), pieces };
    const found = smallestHeight(asked, QUICK_EFFORT);
    if (found.kind === "at-no-height") throw new Error(found.reason.kind);
    expect(found.heightUm).toBe(9 + 1 + 8 + 6 * 6);
    expect(
      placementFaults({ ...asked, inside: { ...asked.base, heightUm: found.heightUm } }, found.placement),
    ).toEqual([]);
  });

  it("is at no height where a piece is larger than the base", () => {
    expect(smallestHeight({ ...base(5, 5), pieces: [piece(1, 1, 1), piece(6, 6, 1)] }, USUAL_EFFORT)).toEqual(
      {
        kind: "at-no-height",
        reason: { kind: "piece-too-large", piece: 1 },
      },
    );
  });

  it("is exact up to five pieces: it fits there, and nowhere below", () => {
    fc.assert(
      fc.property(askedQuestions(5), ({ pieces, inside, clearance }) => {
        const found = smallestHeight({ pieces, clearance, base: inside }, USUAL_EFFORT);
        if (found.kind === "at-no-height") return;
        const at = (heightUm: number) => ({ pieces, clearance, inside: { ...inside, heightUm } });
        expect(found.kind).toBe("exact");
        expect(placementFaults(at(found.heightUm), found.placement)).toEqual([]);
        for (let heightUm = 1; heightUm < found.heightUm; heightUm++) {
          expect(cartonFit(at(heightUm), USUAL_EFFORT).kind).toBe("does-not-fit");
        }
      }),
      { numRuns: 60, seed: 21 },
    );
  });

  it("says with more pieces whether less is ruled out", () => {
    const mm = 1000;
    const copies = (count: number) => Array.from({ length: count }, () => piece(40 * mm, 40 * mm, 40 * mm));
    const wide = { ...base(100 * mm, 100 * mm) };
    // Four a layer; eight in two layers, by what goes in a row.
    expect(smallestHeight({ ...wide, pieces: copies(8) }, QUICK_EFFORT)).toMatchObject({
      kind: "exact",
      heightUm: 80 * mm,
    });
    const bricks = Array.from({ length: 27 }, () => piece(mm, 2 * mm, 4 * mm));
    const found = smallestHeight(
      { ...base(6 * mm, 6 * mm), pieces: bricks },
      { ...QUICK_EFFORT, looks: 10_000 },
    );
    if (found.kind === "at-no-height") throw new Error(found.reason.kind);
    expect(found.kind).toBe("best-found");
    expect(found.heightUm).toBeGreaterThan(6 * mm);
  });
});
