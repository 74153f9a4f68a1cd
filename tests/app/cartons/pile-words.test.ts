import { describe, expect, it } from "vitest";
import { pileWords } from "../../../app/cartons/pile-words";

const INCH_UM = 25_400;

describe("how high cartons are piled", () => {
  it("is what the board bears, where that is within reach", () => {
    expect(pileWords(4, 12 * INCH_UM)).toBe("4 high");
  });

  // 1.4 m: common practice, no source. 1400 / 304.8 = 4.6 cartons of a foot.
  it("is never above a shoulder, whatever the board bears", () => {
    expect(pileWords(68, 12 * INCH_UM)).toMatch(/^4 high, no higher than your shoulder/);
    expect(pileWords(9, 60 * INCH_UM)).toMatch(/^1 high/);
  });
});
