import { describe, expect, it } from "vitest";
import { COMMON_SIZES, rangeSizes } from "#app/cartons/range/range-sizes.ts";
import { CENT, inches } from "../../../lib/cartons/choice/mug-bench";
import { cartonSupply, DOLLARS, onShelf } from "../small-shelf";

/** 8 1/3 sq ft of board for $2.00. */
const CUBE = onShelf(cartonSupply("cube-12", [12, 12, 12]), {
  replacement: new Map([["cube-12", 200 * CENT]]),
});

const sizesOf = (text: string, cartons = [CUBE]) => {
  const read = rangeSizes(text, DOLLARS, cartons);
  if (read.kind !== "sizes") throw new Error(read.message);
  return read.sizes;
};
const messageOf = (text: string) => {
  const read = rangeSizes(text, DOLLARS, [CUBE]);
  return read.kind === "unreadable" ? read.message : "";
};

describe("sizes that one could buy", () => {
  it("are a line each, with the price of one where it is known", () => {
    expect(sizesOf("12 x 9 x 6 in; 0.85\n\n 8 x 8 x 8 ;0 ")).toEqual([
      { name: "12 x 9 x 6 in", inside: inches(12, 9, 6), value: 85 * CENT, isPriceGuess: false },
      { name: "8 x 8 x 8", inside: inches(8, 8, 8), value: 0, isPriceGuess: false },
    ]);
  });

  it("cost what board costs on the shelf, by its area, where no price is typed: a guess", () => {
    // (2 × (8 + 8) + 2) × (8 + 8) = 544 of 1,200 sq in
    const [size] = sizesOf("8 x 8 x 8 in");
    expect(size?.isPriceGuess).toBe(true);
    expect((size?.value ?? 0) / CENT).toBeCloseTo((544 / 1_200) * 200, 3);
  });

  it("cost a dollar a square metre where no carton has a price", () => {
    const [size] = sizesOf("8 x 8 x 8 in", [onShelf(cartonSupply("cube-12", [12, 12, 12]))]);
    expect((size?.value ?? 0) / CENT).toBeCloseTo(544 * 0.0254 ** 2 * 100, 2);
  });

  it("have the longer side of their opening first, whichever way it was typed", () => {
    expect(sizesOf("9 x 12 x 6 in")[0]?.inside).toEqual(inches(12, 9, 6));
    expect(sizesOf("8 x 8 x 14 in")[0]?.inside).toEqual(inches(8, 8, 14));
  });

  it("may be none", () => {
    expect(sizesOf(" \n\n")).toEqual([]);
  });

  it("are all read of the common ones", () => {
    expect(sizesOf(COMMON_SIZES)).toHaveLength(COMMON_SIZES.split("\n").length);
  });
});

describe("a line of sizes that can't be read", () => {
  it.each([
    ["8 x 8 x 8\n\n12 by\n9 x 9 x 9", "Line 3, “12 by”: write three inside sizes"],
    ["12 x 9", "Line 1, “12 x 9”: write three inside sizes"],
    ["; 0.85", "Line 1, “; 0.85”: write three inside sizes"],
    ["8 x 8 x 8; cheap", "Line 1, “cheap”: write the price of one, like 0.85, or leave it out."],
    ["8 x 8 x 8; -1", "Line 1, “-1”: write the price of one"],
  ])("is named by its number, with the way out: %j", (text, message) => {
    expect(messageOf(text)).toContain(message);
  });

  it("is one of more than forty", () => {
    const lines = (count: number) => Array.from({ length: count }, () => "8 x 8 x 8").join("\n");
    expect(sizesOf(lines(40))).toHaveLength(40);
    expect(messageOf(lines(41))).toBe("At most 40 sizes are looked at, and these are 41.");
  });
});
