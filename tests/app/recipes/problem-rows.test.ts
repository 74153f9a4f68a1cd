import { describe, expect, it } from "vitest";
import { problemRows, rowsWords } from "#app/recipes/problem-rows.ts";

describe("rows with problems", () => {
  it("are named once each, from the top, steps before cartons", () => {
    const rows = problemRows({ "upTo.0": "x", "amount.10": "x", "words.2": "x", "amount.2": "x", mass: "x" });
    expect(rowsWords(rows)).toBe("row 3, row 11, carton row 1");
  });
});
