import { describe, expect, it } from "vitest";
import { boardPounds, facingPounds, guessedBoardWeight } from "#lib/cartons/board/board-weight";
import { cartonMass } from "#lib/packing/carton-mass";

describe("boardPounds", () => {
  it("adds liners, and mediums by their take-up", () => {
    // 42 + 42 + 42 + 26 × 1.32 + 26 × 1.43; the take-up is from memory.
    const mediums = [
      { pounds: 26, flute: "B" },
      { pounds: 26, flute: "C" },
    ] as const;
    expect(boardPounds({ liners: [42, 42, 42], mediums })).toBeCloseTo(197.5, 6);
  });

  it("refuses papers that make no board", () => {
    const mediums = [{ pounds: 26, flute: "C" }] as const;
    expect(() => boardPounds({ liners: [42], mediums })).toThrow(RangeError);
    expect(() => boardPounds({ liners: [42], mediums: [] })).toThrow(RangeError);
    expect(() => boardPounds({ liners: [42, 0], mediums })).toThrow(RangeError);
    expect(() => facingPounds([Number.NaN])).toThrow(RangeError);
  });
});

describe("guessedBoardWeight", () => {
  const cube = { lengthUm: 304_800, widthUm: 304_800, heightUm: 304_800 };

  it("is what a carton's mass is guessed from for single wall", () => {
    expect(cartonMass(cube, guessedBoardWeight("single"))).toBe(cartonMass(cube));
  });

  it("puts double wall at 1.7 to 1.9 times single wall, from memory", () => {
    const times = cartonMass(cube, guessedBoardWeight("double")) / cartonMass(cube);
    expect(times).toBeGreaterThanOrEqual(1.7);
    expect(times).toBeLessThanOrEqual(1.9);
    expect(guessedBoardWeight("triple")).toBeGreaterThan(guessedBoardWeight("double"));
  });
});
