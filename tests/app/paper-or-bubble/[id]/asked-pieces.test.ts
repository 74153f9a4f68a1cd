import { describe, expect, it } from "vitest";
import { askedPieces } from "#app/paper-or-bubble/[id]/asked-pieces.ts";

describe("how many pieces the address asks about", () => {
  it("is one where it says nothing", () => {
    expect(askedPieces(undefined)).toEqual({ count: 1, problem: null });
  });

  it.each([
    ["1", 1],
    ["2", 2],
    ["24", 24],
  ])("is %s as written", (typed, count) => {
    expect(askedPieces(typed)).toEqual({ count, problem: null });
  });

  it.each(["0", "25", "-1", "1.5", "2,5", "two", "", "1e1", "0x10", "Infinity", "NaN", "9".repeat(30)])(
    "is one with a word about it for “%s”",
    (typed) => {
      expect(askedPieces(typed)).toEqual({
        count: 1,
        problem: `“${typed}” in the address is no number of pieces from 1 to 24: one piece is shown.`,
      });
    },
  );
});
