import { describe, expect, it } from "vitest";
import { onlyStyle } from "#lib/cushioning/purchase/only-style";
import { plainMix, plainWay } from "./small-mix";

describe("a question of one style", () => {
  it("keeps that style's way of each type, and all ways of types without it, which it names", () => {
    const paper = plainWay("paper", "paper", 4, 700);
    const bubble = plainWay("bubble", "bubble", 2, 600);
    const asked = plainMix({
      supplies: [],
      offers: [],
      types: [
        { id: "cup", parcels: 4, ways: [paper, bubble] },
        { id: "book", parcels: 1, ways: [paper] },
      ],
    });
    const { question, keptTypeIds } = onlyStyle(asked, "bubble");
    expect(question.types.map(({ ways }) => ways)).toEqual([[bubble], [paper]]);
    expect(keptTypeIds).toEqual(["book"]);
    expect(onlyStyle(asked, "mixed").keptTypeIds).toEqual(["cup", "book"]);
  });
});
