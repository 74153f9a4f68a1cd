import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import { noFitReason } from "#lib/cartons/fit/no-fit-reason";
import { pairSearch } from "#lib/cartons/fit/pair-search";
import { scaledVolume } from "#lib/cartons/fit/scaled-volume";
import type { Sides } from "#lib/cartons/fit/sides";
import { askedQuestions } from "./small-question";

const cubes = (count: number, side: number): readonly (readonly Sides[])[] =>
  Array.from({ length: count }, (): readonly Sides[] => [[side, side, side]]);

describe("the scaled volume", () => {
  it("is twice the room for two blocks over half on every side", () => {
    expect(scaledVolume({ room: [11, 11, 11], pieces: cubes(2, 6) })).toBe(2);
  });

  it("shows that a ninth cube does not go beside eight", () => {
    expect(scaledVolume({ room: [5, 5, 5], pieces: cubes(8, 2) })).toBe(1);
    expect(scaledVolume({ room: [5, 5, 5], pieces: cubes(9, 2) })).toBe(1.125);
  });

  it("never speaks against blocks that fit", () => {
    let spoken = 0;
    fc.assert(
      fc.property(askedQuestions(5), (asked) => {
        const { problem } = fitProblem(asked);
        const plain = noFitReason(problem)?.kind;
        if (plain === "no-room" || plain === "piece-too-large") return;
        const share = scaledVolume(problem);
        if (share <= 1 + 1e-9) return;
        spoken++;
        expect(pairSearch(problem, 1_000_000, "pairs").kind).toBe("none");
      }),
      { numRuns: 2000, seed: 3 },
    );
    expect(spoken).toBeGreaterThan(20);
  });
});
