import { describe, expect, it } from "vitest";
import { hypergeometricTail } from "#lib/statistics/hypergeometric-tail";

describe("chance to draw at least so many marked ones", () => {
  it("is that of the lady tasting tea", () => {
    // R. A. Fisher (1935), The Design of Experiments, chapter II: 1, 16, 36, 16, 1 of 70 for 4 to 0 cups right.
    const cups = { all: 8, marked: 4, drawn: 4 };
    expect(hypergeometricTail(4, cups)).toBeCloseTo(1 / 70, 12);
    expect(hypergeometricTail(3, cups)).toBeCloseTo(17 / 70, 12);
    expect(hypergeometricTail(0, cups)).toBeCloseTo(1, 12);
    expect(hypergeometricTail(5, cups)).toBe(0);
  });

  it("counts what must be drawn because little else is left", () => {
    expect(hypergeometricTail(1, { all: 5, marked: 4, drawn: 2 })).toBe(1);
  });

  it("agrees with counting all draws one by one", () => {
    const urn = { all: 12, marked: 5, drawn: 4 };
    const hands = draws(urn.all, urn.drawn).map((hand) => hand.filter((each) => each < urn.marked).length);
    for (const least of [0, 1, 2, 3, 4]) {
      const share = hands.filter((seen) => seen >= least).length / hands.length;
      expect(hypergeometricTail(least, urn)).toBeCloseTo(share, 12);
    }
  });

  it("refuses counts that can't be", () => {
    expect(() => hypergeometricTail(1, { all: 3, marked: 4, drawn: 1 })).toThrow(RangeError);
    expect(() => hypergeometricTail(0.5, { all: 3, marked: 1, drawn: 1 })).toThrow(RangeError);
  });
});

function draws(all: number, take: number, from = 0): number[][] {
  if (take === 0) return [[]];
  const hands: number[][] = [];
  for (let first = from; first <= all - take; first += 1)
    for (const rest of draws(all, take - 1, first + 1)) hands.push([first, ...rest]);
  return hands;
}
