import { describe, expect, it } from "vitest";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import { pairSearch } from "#lib/cartons/fit/pair-search";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import type { Sides } from "#lib/cartons/fit/sides";
import { evenRandom } from "#lib/statistics/even-random";
import { piece, question, uprightPiece } from "./small-question";

const BUDGET = 100_000;
const searched = (...asked: Parameters<typeof question>) =>
  pairSearch(fitProblem(question(...asked)).problem, BUDGET, "pairs");
const copies = (count: number, sides: Sides) => Array.from({ length: count }, () => piece(...sides));

/** A box of a few units, cut straight through again and again: many pieces alike, a quarter upright, no room to spare. */
function fullBox(random: () => number, count: number): FitQuestion {
  const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
  const box: Sides = [whole(3, 5), whole(3, 5), whole(3, 5)];
  const parts: Sides[] = [box];
  for (let cuts = 0; parts.length < count && cuts < 100; cuts++) {
    const [part = box] = parts.splice(whole(0, parts.length - 1), 1);
    const axis = whole(0, 2);
    const front = whole(1, Math.max(1, (part[axis] ?? 1) - 1));
    const back = (part[axis] ?? 1) - front;
    parts.push(...(back === 0 ? [part] : [withSide(part, axis, front), withSide(part, axis, back)]));
  }
  return question(box, ...parts.map((own) => (random() < 0.25 ? uprightPiece(...own) : piece(...own))));
}

function withSide([length, width, height]: Sides, axis: number, side: number): Sides {
  if (axis === 0) return [side, width, height];
  return axis === 1 ? [length, side, height] : [length, width, side];
}

describe("a search of all arrangements", () => {
  it("finds a packing that no straight cut takes apart", () => {
    // Four bars round a cube, each with its end at the side of the next.
    const asked = question([5, 5, 1], ...copies(4, [2, 3, 1]), piece(1, 1, 1));
    const { problem, placement } = fitProblem(asked);
    const end = pairSearch(problem, BUDGET, "pairs");
    if (end.kind !== "found") throw new Error(`ended with ${end.kind}`);
    expect(placementFaults(asked, placement(end.placed))).toEqual([]);
  });

  it("proves that there is none, though the volume would do", () => {
    expect(searched([11, 11, 11], piece(6, 6, 6), piece(6, 6, 6)).kind).toBe("none");
    // 5 x 5 holds four 2 x 2 in plan, in each of the layers.
    expect(searched([5, 5, 5], ...copies(8, [2, 2, 2])).kind).toBe("found");
    expect(searched([5, 5, 3], ...copies(4, [2, 2, 2])).kind).toBe("found");
    expect(searched([5, 5, 3], ...copies(5, [2, 2, 2])).kind).toBe("none");
  });

  it("loses no packing: a full box cut to pieces is found again, with pairs or turns first", () => {
    const random = evenRandom(31);
    for (let at = 0; at < 400; at++) {
      const asked = fullBox(random, 4 + (at % 4));
      const { problem, placement } = fitProblem(asked);
      for (const first of ["pairs", "turns"] as const) {
        const end = pairSearch(problem, 1_000_000, first);
        if (end.kind !== "found") throw new Error(`ended with ${end.kind}: ${JSON.stringify(asked)}`);
        expect(placementFaults(asked, placement(end.placed))).toEqual([]);
      }
    }
  });

  it("tips no upright piece", () => {
    expect(searched([4, 3, 2], piece(2, 3, 4)).kind).toBe("found");
    expect(searched([4, 3, 2], uprightPiece(2, 3, 4)).kind).toBe("none");
    expect(searched([4, 3, 2], uprightPiece(3, 4, 2)).kind).toBe("found");
  });

  it("ends with its budget, and says how far it came", () => {
    const asked = fitProblem(question([5, 5, 3], ...copies(5, [2, 2, 2]))).problem;
    const whole = pairSearch(asked, BUDGET, "pairs");
    expect(whole.kind).toBe("none");
    expect(pairSearch(asked, whole.steps, "pairs")).toEqual(whole);
    expect(pairSearch(asked, whole.steps - 1, "pairs")).toEqual({
      kind: "budget-ended",
      steps: whole.steps - 1,
    });
  });
});
