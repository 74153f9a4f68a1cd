import { describe, expect, it } from "vitest";
import { countWords } from "#app/supplies/count/count-words.ts";
import { amountOfUnits } from "#lib/units/amount";

const counted = (difference: number | null) =>
  ({ kind: "counted", difference: difference === null ? null : amountOfUnits(difference) }) as const;

describe("what a count found, in words", () => {
  it("is said beside the book", () => {
    const found = { amount: amountOfUnits(61) };
    expect(countWords(found, counted(-4), "foot")).toBe("61 ft counted, 4 ft less than the book.");
    expect(countWords(found, counted(0), "foot")).toBe("61 ft counted, just as in the book.");
    expect(countWords(found, counted(null), "foot")).toBe("61 ft counted, the first count of this supply.");
    expect(countWords(found, { kind: "already-counted" }, "foot")).toBe(
      "61 ft counted; this count was saved before.",
    );
  });

  it("names how far the measure may be off, where that shows", () => {
    const range = { low: amountOfUnits(69), high: amountOfUnits(72) };
    expect(countWords({ amount: amountOfUnits(71), range }, counted(3), "foot")).toBe(
      "71 ft counted (the measure allows 69 ft to 72 ft), 3 ft more than the book.",
    );
    const fine = { low: amountOfUnits(71), high: amountOfUnits(71.0001) };
    expect(countWords({ amount: amountOfUnits(71), range: fine }, counted(3), "foot")).toBe(
      "71 ft counted, 3 ft more than the book.",
    );
  });
});
