import { describe, expect, it } from "vitest";
import { readRecipe } from "#app/recipes/recipe-form.ts";
import { recipeRows } from "#app/recipes/recipe-rows.ts";
import { day } from "#lib/units/day";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import { CARD_TERMS, TYPED_CARD } from "./card-terms";

const supplies = [...CARD_TERMS.supplies].map(([id, supply]) => ({ ...PLAIN_SUPPLY, id, ...supply }));
const used = supplies.filter(({ retired }) => !retired);

describe("the rows of a card's form", () => {
  it("read back as the card that they show, with what its steps and cartons took that is no longer used", () => {
    const read = readRecipe(TYPED_CARD, CARD_TERMS);
    if (read.kind === "refused") throw new Error("the card was refused");
    const steps = read.steps.map((step, index) => ({ ...step, id: String(index) }));
    const head = {
      id: "mug-1",
      itemTypeId: "mug",
      style: "paper" as const,
      effectiveFrom: day("2026-11-25"),
    };
    const card = { ...head, steps, cartons: read.cartons };
    const { typed } = recipeRows(card, used, "370 g");
    expect(readRecipe({ ...typed, effectiveFrom: "2026-11-25" }, CARD_TERMS)).toEqual(read);

    const old = { ...card, steps: steps.map((step) => ({ ...step, supplyId: "old-paper" })) };
    const rows = recipeRows(old, used, "");
    expect(rows.typed["supplyId.0"]).toBe("old-paper");
    expect(rows.typed["mass"]).toBeUndefined();
  });

  it("has empty rows to go on, which are no part of the card", () => {
    const rows = recipeRows(null, used, "");
    expect([rows.steps, rows.cartons]).toEqual([4, 1]);
    expect(rows.typed).toMatchObject({ "place.3": "4", "supplyId.3": "tissue", "cartonId.0": "cube-8" });
    expect(rows.typed["amount.0"]).toBeUndefined();
  });
});
