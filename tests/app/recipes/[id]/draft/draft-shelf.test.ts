import { describe, expect, it } from "vitest";
import { draftShelf } from "#app/recipes/[id]/draft/draft-shelf.ts";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Supply } from "#prisma/records/supplies";

const supply = (id: string, change: Partial<Supply>): Supply => ({
  ...PLAIN_SUPPLY,
  id,
  name: id,
  kind: "paper",
  useUnit: "sheet",
  ...change,
});
const sheet = { lengthUm: 914_400, widthUm: 609_600 };

describe("the shelf to draft with", () => {
  it("has what is described, the preferred first, and names the rest", () => {
    const shelf = draftShelf(
      [
        supply("newsprint", sheet),
        supply("white", sheet),
        supply("sizeless", {}),
        supply("string", { kind: "other" }),
        supply("cube", { kind: "carton", useUnit: "each", ...sheet, heightUm: 300_000, wall: "double" }),
        supply("flat", { kind: "carton", useUnit: "each" }),
      ],
      ["white"],
    );
    expect(shelf.supplies.map(({ supplyId }) => supplyId)).toEqual(["white", "newsprint"]);
    expect(shelf.cartons).toEqual([
      { supplyId: "cube", inside: { ...sheet, heightUm: 300_000 }, boardUm: 7_000, massMg: null },
    ]);
    expect(shelf.undescribed.map(({ id }) => id)).toEqual(["sizeless", "string", "flat"]);
  });

  it("takes the one size of film by the area for the width of its roll", () => {
    const [film] = draftShelf([
      supply("film", { kind: "bubble", useUnit: "square-foot", lengthUm: 304_800 }),
    ]).supplies;
    expect(film?.form).toMatchObject({ kind: "roll", widthUm: 304_800, pieceUm: null });
  });
});
