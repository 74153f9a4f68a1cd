import { describe, expect, it } from "vitest";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import { sidesBlock } from "#lib/cartons/fit/sides";
import { piece, question, uprightPiece } from "./small-question";

describe("a fit problem", () => {
  it("has the room that the clearance leaves, shortest side first", () => {
    const asked = {
      ...question([30, 12, 20], piece(1, 1, 1)),
      clearance: { wallsUm: 2, baseUm: 3, topUm: 1 },
    };
    expect(fitProblem(asked).problem.room).toEqual([8, 16, 26]);
  });

  it("is the same in whatever order pieces and sides are given", () => {
    const one = fitProblem(question([5, 7, 6], piece(1, 2, 3), piece(4, 3, 2))).problem;
    expect(fitProblem(question([7, 6, 5], piece(2, 4, 3), piece(3, 1, 2))).problem).toEqual(one);
    const upright = fitProblem(question([5, 7, 6], piece(1, 2, 3), uprightPiece(4, 3, 2))).problem;
    expect(fitProblem(question([7, 5, 6], uprightPiece(3, 4, 2), piece(3, 2, 1))).problem).toEqual(upright);
    expect(upright.room[2]).toBe(6);
  });

  it("has six turns for three different sides, fewer where sides are equal or the height stays up", () => {
    const turns = (...asked: Parameters<typeof question>) => fitProblem(question(...asked)).problem.pieces;
    expect(turns([9, 9, 9], piece(1, 2, 3))[0]).toHaveLength(6);
    expect(turns([9, 9, 9], piece(1, 2, 2))[0]).toHaveLength(3);
    expect(turns([9, 9, 9], piece(2, 2, 2))[0]).toEqual([[2, 2, 2]]);
    expect(turns([9, 9, 9], uprightPiece(1, 2, 3))[0]).toEqual([
      [1, 2, 3],
      [2, 1, 3],
    ]);
    expect(turns([9, 9, 9], uprightPiece(2, 2, 3))[0]).toEqual([[2, 2, 3]]);
  });

  it("leads back to the pieces and axes of the question", () => {
    const asked = {
      ...question([30, 12, 20], piece(1, 2, 3), piece(4, 3, 2)),
      clearance: { wallsUm: 2, baseUm: 3, topUm: 1 },
    };
    // Room 8 x 16 x 26: across, up, along.
    const { placement, pieceOf } = fitProblem(asked);
    expect(pieceOf).toEqual([1, 0]);
    expect(
      placement([
        { sides: [2, 3, 4], at: [0, 5, 6] },
        { sides: [1, 2, 3], at: [7, 0, 1] },
      ]),
    ).toEqual([
      { turned: sidesBlock([3, 1, 2]), alongUm: 3, acrossUm: 9, upUm: 3 },
      { turned: sidesBlock([4, 2, 3]), alongUm: 8, acrossUm: 2, upUm: 8 },
    ]);
    expect(() => placement([{ sides: [2, 3, 4], at: [0, 0, 0] }])).toThrow("got none for piece 0");
  });

  it("refuses sides and clearances that are none", () => {
    const one = question([5, 5, 5], piece(1, 1, 1));
    for (const side of [0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => fitProblem(question([5, 5, side], piece(1, 1, 1)))).toThrow(RangeError);
      expect(() => fitProblem(question([5, 5, 5], piece(1, side, 1)))).toThrow(RangeError);
    }
    expect(() => fitProblem({ ...one, clearance: { wallsUm: -1, baseUm: 0, topUm: 0 } })).toThrow("got -1");
    expect(() => fitProblem({ ...one, clearance: { wallsUm: 0, baseUm: 0, topUm: 0.5 } })).toThrow("got 0.5");
    expect(() => fitProblem({ ...one, pieces: [] })).toThrow("at least one piece");
  });
});
