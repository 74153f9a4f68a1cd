import { describe, expect, it } from "vitest";
import { draftShelf } from "#app/recipes/[id]/draft/draft-shelf.ts";
import { styleDraft } from "#app/recipes/[id]/draft/style-draft.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { pieceProblems } from "#lib/packing/piece/piece-problems";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { DEMO_PIECES } from "#prisma/demo/demo-pieces";
import { DEMO_ITEMS } from "#prisma/demo/demo-terms";
import { STARTER_ITEMS } from "#prisma/starter/starter-items";
import { starterSupplyIds } from "#prisma/starter/starter-steps";
import { STARTER_SUPPLIES } from "#prisma/starter/starter-supplies";
import { supplyOfStarter } from "#prisma/starter/supply-of-starter";

const items = STARTER_ITEMS.filter((item) => DEMO_ITEMS.some(({ id }) => id === item.id));
const held = new Set(items.flatMap(starterSupplyIds));
const shelf = draftShelf(
  STARTER_SUPPLIES.filter(({ id }) => held.has(id)).map((supply, position) =>
    supplyOfStarter(supply, position),
  ),
);
const choice = { pieces: 1, cartonId: null, isDouble: false, cushion: null, preferred: [] };

describe("the pieces of the demo shop", () => {
  it("are described for every item type that it sells", () => {
    expect(Object.keys(DEMO_PIECES).sort()).toEqual(DEMO_ITEMS.map(({ id }) => id).sort());
  });

  it("leave nothing undescribed on its shelf", () => {
    expect(shelf.undescribed).toEqual([]);
    expect(shelf.supplies.map(({ material }) => material)).toContain("large-bubble");
  });

  it.each(items)("have a draft on paper in a carton of the shop: $id", ({ id, grams }) => {
    const described = DEMO_PIECES[id];
    if (described === undefined) throw new Error(`${id} is not described`);
    const piece = { ...described, itemTypeId: id, massMg: grams * 1_000 };
    expect(pieceProblems(piece)).toEqual([]);
    const drafts = CUSHION_STYLES.map((style) =>
      styleDraft(style, { piece, habits: USUAL_HABITS, shelf, choice, measures: "imperial" }),
    );
    expect(drafts[0]?.kind).toBe("drafted");
    expect(
      drafts.map(({ kind }) => kind).filter((kind) => kind !== "drafted" && kind !== "no-carton"),
    ).toEqual([]);
  });
});
