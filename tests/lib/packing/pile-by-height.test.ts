import { describe, expect, it } from "vitest";
import { pileByHeight } from "#lib/packing/pile-by-height";

describe("pileByHeight", () => {
  it("finds 300 sheets in 0.9 in", () => {
    expect(pileByHeight({ heightUm: 22860, sheetNm: 76200 })).toBe(300 * 12000);
  });

  it("finds nothing in no height", () => {
    expect(pileByHeight({ heightUm: 0, sheetNm: 76200 })).toBe(0);
  });

  it.each([
    { heightUm: -1, sheetNm: 76200 },
    { heightUm: 0.5, sheetNm: 76200 },
    { heightUm: 22860, sheetNm: 0 },
  ])("refuses $heightUm µm at $sheetNm nm a sheet", (pile) => {
    expect(() => pileByHeight(pile)).toThrow(RangeError);
  });
});
