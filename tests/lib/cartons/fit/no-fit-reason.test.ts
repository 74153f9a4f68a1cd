import { describe, expect, it } from "vitest";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import { noFitReason } from "#lib/cartons/fit/no-fit-reason";
import { piece, question, uprightPiece } from "./small-question";

const reason = (...asked: Parameters<typeof question>) => noFitReason(fitProblem(question(...asked)).problem);

describe("a reason why nothing fits", () => {
  it("is a clearance that leaves nothing", () => {
    const asked = { ...question([6, 6, 6], piece(1, 1, 1)), clearance: { wallsUm: 3, baseUm: 0, topUm: 0 } };
    expect(noFitReason(fitProblem(asked).problem)).toEqual({ kind: "no-room" });
  });

  it("is a piece that is too large alone, in any turn that it may take", () => {
    expect(reason([6, 6, 6], piece(1, 1, 1), piece(8, 1, 1))).toMatchObject({ kind: "piece-too-large" });
    expect(reason([8, 6, 6], piece(1, 1, 1), piece(1, 1, 8))).toBeNull();
    expect(reason([8, 6, 6], piece(1, 1, 1), uprightPiece(1, 1, 8))).toMatchObject({
      kind: "piece-too-large",
    });
  });

  it("is the volume, to the cubic micrometre", () => {
    const side = 300_001;
    const full = question([side, side, 2 * side], piece(side, side, side), piece(side, side, side));
    expect(noFitReason(fitProblem(full).problem)).toBeNull();
    const over = reason(
      [300_000, 300_000, 300_000],
      piece(300_000, 300_000, 299_999),
      piece(300_000, 300_000, 1),
      piece(1, 1, 1),
    );
    expect(over).toEqual({ kind: "volume", piecesMl: expect.closeTo(27_000, 6), roomMl: 27_000 });
  });

  it("is two pieces that find no room beside each other", () => {
    expect(reason([11, 11, 11], piece(6, 6, 6), piece(6, 6, 6))).toEqual({
      kind: "two-too-large",
      pieces: [0, 1],
    });
    expect(reason([12, 11, 11], piece(6, 6, 6), piece(6, 6, 6))).toBeNull();
    // Each could lie flat below the other if both might tip.
    expect(reason([9, 9, 10], piece(5, 5, 8), piece(5, 5, 8))).toBeNull();
    expect(reason([9, 9, 10], uprightPiece(5, 5, 8), uprightPiece(5, 5, 8))).toMatchObject({
      kind: "two-too-large",
    });
  });

  it("is none where none of them speaks, which proves nothing", () => {
    expect(reason([6, 6, 6], ...Array.from({ length: 27 }, () => piece(1, 2, 4)))).toBeNull();
  });
});
