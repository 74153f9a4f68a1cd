import { describe, expect, it } from "vitest";
import { cutPlan } from "#lib/cartons/fit/cut-plan";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { piece, question, uprightPiece } from "./small-question";

describe("a plan of straight cuts", () => {
  it("sets groups against each other", () => {
    const placed = cutPlan({ room: [4, 2, 2], pieces: [[[2, 2, 2]], [[2, 2, 2]]] }, 16);
    expect(placed).toEqual([
      { sides: [2, 2, 2], at: [0, 0, 0] },
      { sides: [2, 2, 2], at: [2, 0, 0] },
    ]);
  });

  it("finds a full box again that was cut to pieces, upright pieces upright", () => {
    const asked = question(
      [7, 6, 5],
      piece(7, 2, 5),
      uprightPiece(4, 3, 5),
      piece(2, 4, 3),
      piece(1, 3, 2),
      piece(2, 3, 1),
      piece(3, 1, 5),
    );
    const { problem, placement } = fitProblem(asked);
    const placed = cutPlan(problem, 16);
    if (placed === null) throw new Error("found none");
    expect(placementFaults(asked, placement(placed))).toEqual([]);
  });

  it("finds none where pieces are too large, or where no straight cut would do", () => {
    expect(cutPlan({ room: [3, 2, 2], pieces: [[[2, 2, 2]], [[2, 2, 2]]] }, 16)).toBeNull();
    const bars = Array.from({ length: 4 }, () => piece(2, 3, 1));
    const pinwheel = question([5, 5, 1], ...bars, piece(1, 1, 1));
    expect(cutPlan(fitProblem(pinwheel).problem, 1000)).toBeNull();
  });
});
