import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { placementHolds } from "#lib/cartons/fit/placement-holds";
import { blockSides, type Sides, sidesBlock } from "#lib/cartons/fit/sides";
import { askedQuestions, NO_CLEARANCE, piece, question, uprightPiece } from "./small-question";

const answerTo = (asked: FitQuestion) => cartonFit(asked, USUAL_EFFORT);

/** Everything of an answer that must not hang on the order in which a question is put. */
function verdict(asked: FitQuestion) {
  const answer = answerTo(asked);
  if (answer.kind === "fits") return { kind: answer.kind };
  if (answer.kind === "not-proven") return answer;
  const { reason } = answer;
  if (reason.kind === "piece-too-large" || reason.kind === "two-too-large") return { kind: reason.kind };
  return reason;
}

const turnedSides = (sides: Sides, by: number): Sides => {
  const [a, b, c] = sides;
  const all: readonly Sides[] = [
    [a, b, c],
    [a, c, b],
    [b, a, c],
    [b, c, a],
    [c, a, b],
    [c, b, a],
  ];
  return all[by % all.length] ?? sides;
};

describe("whether pieces fit a carton", () => {
  it("is a placement that keeps the clearance, with nothing in the air", () => {
    const answer = answerTo({
      ...question([9, 6, 8], piece(4, 4, 3), piece(4, 4, 3)),
      clearance: { wallsUm: 1, baseUm: 1, topUm: 1 },
    });
    if (answer.kind !== "fits") throw new Error(answer.kind);
    expect(answer.placement.some(({ upUm }) => upUm === 1)).toBe(true);
  });

  it("is no, with the pieces of the question named", () => {
    expect(answerTo(question([6, 6, 6], piece(1, 1, 1), piece(8, 1, 1)))).toEqual({
      kind: "does-not-fit",
      reason: { kind: "piece-too-large", piece: 1 },
    });
    const three = answerTo(question([11, 11, 11], piece(1, 1, 1), piece(6, 6, 7), piece(6, 6, 6)));
    expect(three).toMatchObject({ kind: "does-not-fit", reason: { kind: "two-too-large" } });
    if (three.kind === "does-not-fit" && three.reason.kind === "two-too-large") {
      expect(three.reason.pieces.toSorted()).toEqual([1, 2]);
    }
  });

  it("changes with the clearance", () => {
    const asked = question([12, 12, 12], ...Array.from({ length: 8 }, () => piece(6, 6, 6)));
    expect(answerTo(asked).kind).toBe("fits");
    for (const clearance of [
      { ...NO_CLEARANCE, wallsUm: 1 },
      { ...NO_CLEARANCE, baseUm: 1 },
      { ...NO_CLEARANCE, topUm: 1 },
    ]) {
      expect(answerTo({ ...asked, clearance }).kind).toBe("does-not-fit");
    }
  });

  it("holds by the checker wherever it is yes, and is always yes or no up to six pieces", () => {
    const kinds = new Map<string, number>();
    fc.assert(
      fc.property(askedQuestions(6), (asked) => {
        const answer = answerTo(asked);
        const kind = answer.kind === "does-not-fit" ? answer.reason.kind : answer.kind;
        kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
        expect(answer.kind).not.toBe("not-proven");
        if (answer.kind === "fits") expect(placementFaults(asked, answer.placement)).toEqual([]);
      }),
      { numRuns: 500, seed: 11 },
    );
    for (const kind of ["fits", "all-searched", "volume"]) expect(kinds.get(kind) ?? 0).toBeGreaterThan(10);
  });

  it("leaves upright pieces upright", () => {
    fc.assert(
      fc.property(askedQuestions(5), (asked) => {
        const upright = { ...asked, pieces: asked.pieces.map((one) => ({ ...one, upright: true })) };
        const answer = answerTo(upright);
        if (answer.kind !== "fits") return;
        expect(answer.placement.map(({ turned }) => turned.heightUm)).toEqual(
          asked.pieces.map(({ block }) => block.heightUm),
        );
      }),
    );
    expect(answerTo(question([4, 3, 2], piece(2, 3, 4))).kind).toBe("fits");
    expect(answerTo(question([4, 3, 2], uprightPiece(2, 3, 4))).kind).toBe("does-not-fit");
  });

  it("stays yes in a larger carton", () => {
    fc.assert(
      fc.property(
        askedQuestions(5),
        fc.tuple(fc.nat(3), fc.nat(3), fc.nat(3)),
        (asked, [along, across, up]) => {
          const { lengthUm, widthUm, heightUm } = asked.inside;
          const larger = {
            ...asked,
            inside: sidesBlock([lengthUm + along, widthUm + across, heightUm + up]),
          };
          const answer = answerTo(asked);
          if (answer.kind !== "fits") return;
          expect(answerTo(larger).kind).toBe("fits");
          expect(placementHolds(larger, answer.placement)).toBe(true);
        },
      ),
      { numRuns: 300, seed: 12 },
    );
  });

  it("is the same in whatever order pieces and sides are given", () => {
    const turns = fc.array(fc.nat(5), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(askedQuestions(8), turns, fc.boolean(), (asked, by, isTippable) => {
        // Without upright pieces and with equal clearance, any side of the carton may be its height.
        const free = {
          ...asked,
          pieces: asked.pieces.map((one) => ({ ...one, upright: false })),
          clearance: { wallsUm: 1, baseUm: 1, topUm: 1 },
        };
        const given = isTippable ? free : asked;
        const pieces = given.pieces.map((one, at) => {
          if (!one.upright)
            return { ...one, block: sidesBlock(turnedSides(blockSides(one.block), by[at] ?? 0)) };
          const { lengthUm, widthUm, heightUm } = one.block;
          return { ...one, block: sidesBlock([widthUm, lengthUm, heightUm]) };
        });
        const { lengthUm, widthUm, heightUm } = given.inside;
        const inside = isTippable
          ? sidesBlock(turnedSides(blockSides(given.inside), by[8] ?? 0))
          : sidesBlock([widthUm, lengthUm, heightUm]);
        expect(verdict({ ...given, pieces: pieces.toReversed(), inside })).toEqual(verdict(given));
      }),
      { numRuns: 200, seed: 13 },
    );
  });

  it("refuses what is no question", () => {
    expect(() => answerTo(question([6, 6, 6]))).toThrow(RangeError);
    expect(() => answerTo(question([6, 6, 6], piece(0, 1, 1)))).toThrow("got 0");
  });
});
