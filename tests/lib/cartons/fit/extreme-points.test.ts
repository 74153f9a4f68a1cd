import { describe, expect, it } from "vitest";
import { extremePoints } from "#lib/cartons/fit/extreme-points";

const distinct = (points: readonly (readonly number[])[]) =>
  [...new Set(points.map((point) => point.join(" ")))].toSorted();

describe("extreme points", () => {
  it("are the three far corners of a block at the origin", () => {
    const block = { sides: [2, 3, 4], at: [0, 0, 0] } as const;
    expect(distinct(extremePoints(block, [block]))).toEqual(["0 0 4", "0 3 0", "2 0 0"]);
  });

  it("slide back to the next block or wall", () => {
    const low = { sides: [2, 3, 4], at: [0, 0, 0] } as const;
    const beside = { sides: [3, 1, 6], at: [2, 0, 0] } as const;
    // Behind the narrow one stands the low one; over its top nothing stops the way to the wall.
    expect(distinct(extremePoints(beside, [low, beside]))).toEqual(["0 0 6", "2 0 6", "2 1 0", "5 0 0"]);
  });

  it("slide back onto a block that lies in the way", () => {
    const base = { sides: [6, 6, 2], at: [0, 0, 0] } as const;
    const upon = { sides: [2, 2, 2], at: [0, 0, 2] } as const;
    expect(distinct(extremePoints(upon, [base, upon]))).toEqual(["0 0 4", "0 2 2", "2 0 2"]);
  });
});
