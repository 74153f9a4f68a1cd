import { describe, expect, it } from "vitest";
import { peakLitres } from "#lib/purchasing/plan/peak-litres";
import { plainQuestion, plainSupply } from "./small-question";

describe("litres of the fullest week", () => {
  it("are the most at home at once; what is owed takes none", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [1, 1], { litres: 2 }), plainSupply("tape", [1, 1], { litres: 3 })],
      suppliers: [],
      offers: [],
    });
    // 2 * 5 + 0, then 2 * 1 + 3 * 4.
    const stock = [
      { supplyId: "paper", after: [5, 1], end: [4, 0] },
      { supplyId: "tape", after: [-7, 4], end: [-8, 3] },
    ];
    expect(peakLitres(question, { stock })).toBe(14);
  });
});
