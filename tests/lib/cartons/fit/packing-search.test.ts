import { describe, expect, it } from "vitest";
import { QUICK_EFFORT, USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import { packingSearch } from "#lib/cartons/fit/packing-search";
import type { Sides } from "#lib/cartons/fit/sides";
import { piece, question } from "./small-question";

const copies = (count: number, sides: Sides) => Array.from({ length: count }, () => piece(...sides));
const problem = (...asked: Parameters<typeof question>) => fitProblem(question(...asked)).problem;
const BARS = [...copies(4, [2, 3, 1]), piece(1, 1, 1)];

describe("a search for a packing", () => {
  it("finds what one block after the other finds", () => {
    expect(packingSearch(problem([12, 12, 12], ...copies(8, [6, 6, 6])), QUICK_EFFORT).kind).toBe("found");
  });

  it("goes through all arrangements up to six blocks, whatever the effort", () => {
    const none = { shuffles: 0, groups: 0, looks: 0 };
    expect(packingSearch(problem([5, 5, 1], ...BARS), none).kind).toBe("found");
    expect(
      packingSearch(problem([5, 5, 1], ...BARS.slice(1), piece(2, 3, 1), piece(1, 1, 1)), none).kind,
    ).not.toBe("found");
    const end = packingSearch(problem([5, 5, 3], ...copies(5, [2, 2, 2])), none);
    expect(end).toEqual({ kind: "none", reason: { kind: "all-searched", states: expect.any(Number) } });
  });

  it("says that a ninth does not go beside eight, by what goes in a row", () => {
    const end = packingSearch(problem([5, 5, 5], ...copies(9, [2, 2, 2])), QUICK_EFFORT);
    expect(end).toEqual({ kind: "none", reason: { kind: "rows", share: 1.125 } });
  });

  it("says what it tried where it found and proved nothing, the same each time", () => {
    const bricks = problem([6, 6, 6], ...copies(27, [1, 2, 4]));
    const effort = { ...USUAL_EFFORT, shuffles: 3, looks: 200_000 };
    const end = packingSearch(bricks, effort);
    // 351 pairs a state: 285 states with turns first, 570 with pairs first.
    expect(end).toEqual({ kind: "not-proven", tried: { passes: 39, hasCutPlan: false, states: 855 } });
    expect(packingSearch(bricks, effort)).toEqual(end);
  });

  it("uses the plan of straight cuts with up to ten blocks", () => {
    // A box of 40 x 30 x 25 cut into seven.
    const cut = problem(
      [40, 30, 25],
      piece(25, 19, 11),
      piece(21, 19, 14),
      piece(21, 19, 11),
      piece(21, 18, 11),
      piece(21, 11, 7),
      piece(19, 19, 13),
      piece(19, 19, 12),
    );
    expect(packingSearch(cut, { shuffles: 0, groups: 16, looks: 0 }).kind).toBe("found");
  });
});
