import { describe, expect, it } from "vitest";
import { outcomeWords } from "#app/this-week/outcome-words.ts";

const nameOf = (id: string) => ({ a: "Tissue", b: "Tape", c: "Small bubble" })[id] ?? id;
const outcome = { expected: 12, close: 9, more: [], ranOut: [], toOrder: 0, ordered: 0 };

describe("how a check turned out, in words", () => {
  it("says that nothing ran out, and how many came as expected", () => {
    expect(outcomeWords(outcome, nameOf)).toEqual([
      "Nothing ran out.",
      "9 of 12 supplies were used about as expected, within a quarter.",
    ]);
  });

  it("names what ran out, what took more, and counts the orders", () => {
    const more = [
      { supplyId: "c", times: 2.14 },
      { supplyId: "a", times: 1.6 },
      { supplyId: "b", times: 1.5 },
    ];
    expect(outcomeWords({ ...outcome, ranOut: ["a", "b"], more, toOrder: 3, ordered: 1 }, nameOf)).toEqual([
      "Tissue and Tape ran out by the book.",
      "9 of 12 supplies were used about as expected, within a quarter.",
      "Small bubble took 2.1 times as much.",
      "Tissue took 1.6 times as much.",
      "Of 3 to order, 1 was ordered.",
    ]);
    expect(outcomeWords({ ...outcome, toOrder: 2, ordered: 2 }, nameOf).at(-1)).toBe(
      "Of 2 to order, all were ordered.",
    );
  });
});
