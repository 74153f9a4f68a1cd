import { describe, expect, it } from "vitest";
import { boardPounds, facingPounds, timesSingleWall } from "#lib/cartons/board/board-weight";

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

describe("timesSingleWall", () => {
  it("is 1.7 to 1.9 for double wall, from memory, and more for triple wall", () => {
    expect(timesSingleWall("single")).toBe(1);
    expect(timesSingleWall("double")).toBeGreaterThanOrEqual(1.7);
    expect(timesSingleWall("double")).toBeLessThanOrEqual(1.9);
    expect(timesSingleWall("triple")).toBeGreaterThan(timesSingleWall("double"));
  });
});
