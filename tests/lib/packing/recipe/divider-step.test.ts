import { describe, expect, it } from "vitest";
import { dividerStep } from "#lib/packing/recipe/divider-step";
import { card, inches, looseFill } from "../bench-shop";

const cells = { lengthUm: inches(15), widthUm: inches(10), heightUm: inches(5) };

describe("dividerStep", () => {
  // Computed: 15 x 5 + 2 x 10 x 5 = 175 sq in of a sheet of 864.
  it("divides two rows of three with three strips from half a sheet", () => {
    const step = dividerStep(cells, { rows: 2, columns: 3, tiers: 1 }, card);
    expect([step?.words, step?.theory, step?.used]).toEqual([
      "Divide the set with 3 strips of card",
      "0.2 sheet",
      "½ sheet",
    ]);
  });

  it("lays a pad between two tiers", () => {
    const step = dividerStep(cells, { rows: 1, columns: 1, tiers: 2 }, card);
    expect(step?.words).toBe("Divide the set with 1 pad of card");
  });

  it("is not there for one piece", () => {
    expect(dividerStep(cells, { rows: 1, columns: 1, tiers: 1 }, card)).toBeNull();
  });

  it("refuses what has no area", () => {
    expect(() => dividerStep(cells, { rows: 2, columns: 1, tiers: 1 }, looseFill)).toThrow(RangeError);
  });
});
