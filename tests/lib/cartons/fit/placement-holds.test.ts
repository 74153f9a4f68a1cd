import { describe, expect, it } from "vitest";
import { placementHolds } from "#lib/cartons/fit/placement-holds";
import { sidesBlock } from "#lib/cartons/fit/sides";
import { piece, question } from "./small-question";

describe("a placement found for one carton", () => {
  const pieces = [piece(2, 2, 2), piece(2, 2, 3)];
  const found = [
    { turned: sidesBlock([2, 2, 2]), alongUm: 0, acrossUm: 0, upUm: 0 },
    { turned: sidesBlock([3, 2, 2]), alongUm: 2, acrossUm: 0, upUm: 0 },
  ];

  it("holds in that carton and in any that contains it", () => {
    expect(placementHolds(question([5, 2, 2], ...pieces), found)).toBe(true);
    expect(placementHolds(question([9, 3, 2], ...pieces), found)).toBe(true);
  });

  it("does not hold in a shorter one, nor for other pieces", () => {
    expect(placementHolds(question([4, 9, 9], ...pieces), found)).toBe(false);
    expect(placementHolds(question([5, 2, 2], ...pieces.toReversed()), found)).toBe(false);
  });
});
