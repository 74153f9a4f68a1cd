import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import { greedyPacking } from "#lib/cartons/fit/greedy-packing";
import { shuffledPass } from "#lib/cartons/fit/greedy-passes";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { evenRandom } from "#lib/statistics/even-random";
import { askedQuestions } from "./small-question";

describe("a greedy pass", () => {
  it("sets each block where it keeps lowest", () => {
    const problem = {
      room: [4, 4, 4] as const,
      pieces: [[[4, 4, 1] as const, [4, 1, 4] as const], [[2, 2, 3] as const]],
    };
    const placed = greedyPacking(problem, { order: [0, 1], axes: [2, 1, 0], keep: "far" });
    expect(placed).toEqual([
      { sides: [4, 4, 1], at: [0, 0, 0] },
      { sides: [2, 2, 3], at: [0, 0, 1] },
    ]);
  });

  it("ends without a packing where a block finds no place, though another order finds one", () => {
    const problem = { room: [5, 2, 1] as const, pieces: [[[2, 1, 1] as const], [[5, 1, 1] as const]] };
    const pass = { axes: [2, 0, 1], keep: "near" } as const;
    expect(greedyPacking({ ...problem, room: [5, 1, 1] }, { ...pass, order: [0, 1] })).toBeNull();
    expect(greedyPacking(problem, { ...pass, order: [1, 0] })).toHaveLength(2);
  });

  it("gives only packings that hold, whatever the pass", () => {
    fc.assert(
      fc.property(askedQuestions(6), fc.nat(1000), (asked, seed) => {
        const { problem, placement } = fitProblem(asked);
        const placed = greedyPacking(problem, shuffledPass(asked.pieces.length, evenRandom(seed)));
        if (placed) expect(placementFaults(asked, placement(placed))).toEqual([]);
      }),
    );
  });
});
