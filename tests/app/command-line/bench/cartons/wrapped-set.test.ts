import { describe, expect, it } from "vitest";
import { blockVolume } from "#lib/packing/block";
import {
  CARTON_SIZES_IN,
  cartonInside,
  wrappedQuestion,
  wrappedSet,
} from "../../../../../app/command-line/bench/cartons/wrapped-set";

const questions = Array.from({ length: 100 }, (_, seed) => wrappedQuestion(seed, 6));

describe("wrapped pieces for the bench", () => {
  it("are the same for the same seed", () => {
    expect(wrappedSet(7, 6)).toEqual(wrappedSet(7, 6));
    expect(wrappedSet(8, 6)).not.toEqual(wrappedSet(7, 6));
  });

  it("are of all sorts: alike and unlike, upright and free, with and without clearance", () => {
    const alike = questions.filter(
      ({ pieces }) => new Set(pieces.map(({ block }) => JSON.stringify(block))).size < 6,
    );
    const upright = questions.filter(({ pieces }) => pieces.some((piece) => piece.upright));
    const clear = questions.filter(({ clearance }) => clearance.wallsUm > 0);
    for (const some of [alike, upright, clear]) {
      expect(some.length).toBeGreaterThan(20);
      expect(some.length).toBeLessThan(100);
    }
    expect(questions.every(({ pieces }) => pieces.length === 6)).toBe(true);
  });

  it("never fill more than the carton", () => {
    for (const { pieces, inside } of questions) {
      expect(pieces.reduce((sum, { block }) => sum + blockVolume(block), 0)).toBeLessThan(
        blockVolume(inside),
      );
    }
  });

  it("meet fifty different cartons", () => {
    expect(new Set(CARTON_SIZES_IN.map((sides) => sides.join())).size).toBe(50);
    expect(cartonInside([12, 9, 6])).toEqual({ lengthUm: 304_800, widthUm: 228_600, heightUm: 152_400 });
  });
});
