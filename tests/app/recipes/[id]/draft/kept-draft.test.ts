import { describe, expect, it } from "vitest";
import { keptDraft } from "#app/recipes/[id]/draft/kept-draft.ts";
import { billOfMaterials } from "#lib/packing/bill";
import { USUAL_HABITS } from "#lib/packing/habits";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { draftedRecipe } from "#lib/packing/recipe/drafted-recipe";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import {
  cartonOf,
  cartonTape,
  householdTape,
  mug,
  paper,
  smallBubble,
  tissue,
} from "../../../../lib/packing/bench-shop";

const request = {
  piece: mug,
  pieces: 1,
  habits: USUAL_HABITS,
  supplies: chosenSupplies("paper", [tissue, paper, smallBubble, householdTape, cartonTape]),
  carton: cartonOf(12, 9, 9),
  outer: null,
  measures: "imperial",
} as const;
const drafted = draftedRecipe(request);
if (drafted.kind !== "drafted") throw new Error(`no draft: ${drafted.kind}`);
const of = { itemTypeId: "mug", style: "paper" as const, effectiveFrom: day("2026-11-25") };

describe("a draft that is kept", () => {
  const kept = keptDraft(drafted, of, null);

  it("is a version of the card with every step in its place, and says that it is no figure of the shop", () => {
    expect(kept).toMatchObject({ ...of, commonPractice: true });
    expect(kept.note).toMatch(/not from your own figures/);
    expect(kept.steps.map(({ position }) => position)).toEqual(drafted.steps.map((_, index) => index));
    expect(kept.steps.map(({ words, supplyId, amount, per }) => ({ words, supplyId, amount, per }))).toEqual(
      drafted.steps.map(({ words, supplyId, amount, per }) => ({ words, supplyId, amount, per })),
    );
    expect(new Set(kept.steps.map(({ id }) => id)).size).toBe(kept.steps.length);
    expect(kept.steps.some(({ id }) => id.startsWith("draft"))).toBe(false);
  });

  it("of a box in a box has both cartons: the outer as the carton, the inner as a step, and its bill takes each once", () => {
    const double = draftedRecipe({ ...request, outer: cartonOf(16, 13, 13) });
    if (double.kind !== "drafted") throw new Error(`no draft: ${double.kind}`);
    const card = keptDraft(double, of, null);
    expect(card.cartons).toEqual([{ upTo: 1, supplyId: "carton-16-13-13" }]);
    const bill = billOfMaterials({ parts: [{ itemTypeId: "mug", pieces: 1, recipe: card }] });
    expect(bill.cartons).toEqual(["carton-16-13-13"]);
    expect(bill.lines.filter(({ supplyId }) => supplyId === "carton-12-9-9")).toMatchObject([
      { amount: amountOfUnits(1) },
    ]);
  });

  it("keeps the cartons for other numbers of pieces", () => {
    const before = {
      ...kept,
      cartons: [
        { upTo: 1, supplyId: "cube-8" },
        { upTo: 4, supplyId: "cube-14" },
      ],
    };
    expect(keptDraft(drafted, of, before).cartons).toEqual([
      { upTo: 1, supplyId: "carton-12-9-9" },
      { upTo: 4, supplyId: "cube-14" },
    ]);
  });
});
