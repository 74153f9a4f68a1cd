import { describe, expect, it } from "vitest";
import { shareWords } from "#app/outlook/share-words.ts";
import { sureWords } from "#app/outlook/sure-words.ts";

describe("how sure a sum is", () => {
  it("is told by the width of its band", () => {
    const of = (low: number, high: number) => sureWords({ mean: 100, low, high, guessedShare: 0 });
    expect(of(90, 110)).toBe("quite sure, give or take 10\u00a0%");
    expect(of(80, 126)).toBe("fairly sure, give or take 23\u00a0%");
    expect(of(50, 150)).toBe("unsure, give or take 50\u00a0%");
    expect(of(0, 300)).toBe("very unsure, give or take 150\u00a0%");
  });

  it("says what of it is a guess", () => {
    expect(sureWords({ mean: 100, low: 90, high: 110, guessedShare: 1 / 3 })).toContain(
      "a third of it is a guess",
    );
  });

  it("is not asked where nothing is expected", () => {
    expect(sureWords({ mean: 0, low: 0, high: 0, guessedShare: 0 })).toBe("nothing expected");
  });
});

describe("shares in words", () => {
  it("are plain fractions where one is near, else percent", () => {
    expect([0.1, 0.26, 1 / 3, 0.5, 0.58, 0.99].map(shareWords)).toEqual([
      "a tenth",
      "a quarter",
      "a third",
      "half",
      "58\u00a0%",
      "all",
    ]);
  });
});
