import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { billOfMaterials } from "#lib/packing/bill";
import { USUAL_HABITS } from "#lib/packing/habits";
import { packedMass } from "#lib/packing/packed-mass";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import type { DraftRequest } from "#lib/packing/recipe/draft-request";
import { draftedRecipe } from "#lib/packing/recipe/drafted-recipe";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { sumAmounts } from "#lib/units/amount";
import { parseAmount } from "#lib/units/amount-text";
import { day } from "#lib/units/day";
import * as bench from "../bench-shop";

const shelf = [
  bench.tissue,
  bench.paper,
  bench.smallBubble,
  bench.largeBubble,
  bench.card,
  bench.householdTape,
  bench.cartonTape,
];
const request: DraftRequest = {
  piece: bench.mug,
  pieces: 1,
  habits: USUAL_HABITS,
  supplies: chosenSupplies("mixed", shelf),
  carton: bench.cartonOf(10, 10, 10),
  outer: null,
  measures: "imperial",
};
const drafted = (change: Partial<DraftRequest> = {}) => {
  const recipe = draftedRecipe({ ...request, ...change });
  if (recipe.kind !== "drafted") throw new Error(`no recipe: ${JSON.stringify(recipe)}`);
  return recipe;
};

describe("draftedRecipe", () => {
  it("packs a mug from the inside out", () => {
    const { steps, cartons, leftOut } = drafted();
    expect(steps.map(({ position, words, used }) => `${position} ${words}: ${used}`)).toEqual([
      "1 Fill the hollow loosely with tissue: 1 sheet",
      "2 Pad the handle with bubble: ½ piece",
      "3 Wrap in tissue: ⅓ sheet",
      "4 Wrap in bubble: 3 pieces",
      "5 Hold it with household tape, never on the surface itself: 4 strips",
      "6 Lay a base of paper under the piece: 4 sheets",
      "7 Fill round the piece with paper: 7 sheets",
      "8 Fill the top with paper, close, shake, and add where it moves: 6½ sheets",
      "9 Close the carton with tape: an H above and below: 7¼ ft",
    ]);
    expect(cartons).toEqual([{ upTo: 1, supplyId: "carton-10-10-10" }]);
    expect(leftOut).toEqual([]);
  });

  it("is a recipe: its bill takes the same, and weighs what it says", () => {
    const { steps, cartons, mass } = drafted({ pieces: 3, carton: bench.cartonOf(20, 12, 12) });
    const recipe = {
      id: "draft",
      itemTypeId: "mug",
      style: "mixed",
      effectiveFrom: day("2026-11-25"),
      steps,
      cartons,
    } as const;
    const bill = billOfMaterials({ parts: [{ itemTypeId: "mug", pieces: 3, recipe }] });
    const supplyMasses = new Map(
      shelf.map(({ supplyId, massMg }): [string, number | null] => [supplyId, massMg]),
    );
    const { mg } = packedMass({
      pieces: [{ itemTypeId: "mug", pieces: 3, massMg: 370_000 }],
      lines: bill.lines,
      cartons: [],
      supplyMasses,
    });
    const carton = drafted({ pieces: 3, carton: { ...bench.cartonOf(20, 12, 12), massMg: 900_000 } }).mass.mg;
    expect(carton).toBe(mg + 900_000 + USUAL_HABITS.papersMg);
    expect(mass.guessed).toEqual(["carton-20-12-12"]);
  });

  it("types amounts that read back the same, and explains and marks each as a guess", () => {
    const units = new Map(shelf.map(({ supplyId, useUnit }) => [supplyId, useUnit]));
    for (const style of CUSHION_STYLES) {
      for (const step of drafted({ supplies: chosenSupplies(style, shelf) }).steps) {
        const read = parseAmount(
          `${step.typedValue} ${step.typedUnit}`.trim(),
          units.get(step.supplyId) ?? "each",
          "imperial",
        );
        expect(read).toMatchObject({ kind: "amount", amount: step.amount });
        expect(step.reason).toMatch(/\.$/);
        expect(step.guessed).toBe(true);
      }
    }
  });

  it("is heavier on paper than on bubble", () => {
    const on = (style: (typeof CUSHION_STYLES)[number]) =>
      drafted({ supplies: chosenSupplies(style, shelf) }).mass.mg;
    expect(on("paper") > on("mixed") && on("mixed") > on("bubble")).toBe(true);
  });

  it("refuses a carton that is too tight or too small, and says by how much", () => {
    const tight = draftedRecipe({ ...request, carton: bench.cartonOf(8, 8, 8) });
    expect(tight).toMatchObject({ kind: "too-tight", cartonId: "carton-8-8-8", around: "pieces" });
    expect(tight.kind === "too-tight" && tight.room.leavesUm / 25_400).toBeCloseTo(1.28, 2);
    const small = draftedRecipe({ ...request, carton: bench.cartonOf(5, 5, 5) });
    expect(small.kind).toBe("does-not-fit");
    const habits = { ...USUAL_HABITS, cushionUm: { ...USUAL_HABITS.cushionUm, usual: bench.inches(1.25) } };
    expect(draftedRecipe({ ...request, habits, carton: bench.cartonOf(8, 8, 8) }).kind).toBe("drafted");
  });

  it("refuses a description that cannot be, and a supply that cannot do its job", () => {
    const lid = { acrossUm: bench.inches(9), heightUm: bench.inches(1) };
    expect(draftedRecipe({ ...request, piece: { ...bench.mug, lid } })).toMatchObject({
      kind: "piece-problems",
      problems: [{ field: "lid.acrossUm" }],
    });
    const supplies = { ...request.supplies, cushion: bench.looseFill };
    expect(draftedRecipe({ ...request, supplies })).toEqual({
      kind: "unsuited-supply",
      job: "cushion",
      supplyId: "loose-fill",
    });
  });

  it("says which jobs it left out", () => {
    const { steps, leftOut } = drafted({
      supplies: bench.NO_SUPPLIES,
      pieces: 2,
      carton: bench.cartonOf(20, 12, 12),
    });
    expect(steps).toEqual([]);
    expect(leftOut).toEqual(["hollow", "guard", "surface", "cushion", "bind", "divide", "fill", "seal"]);
    const plain = { ...bench.mug, hollows: [], stickingOut: [] };
    expect(drafted({ piece: plain, supplies: bench.NO_SUPPLIES }).leftOut).not.toContain("guard");
  });

  it("packs a set with its wraps by the piece, dividers once, and fill by the void", () => {
    const carton = bench.cartonOf(20, 18, 12);
    const six = drafted({ pieces: 6, carton });
    expect(six.steps.find(({ job }) => job === "divide")?.words).toBe("Divide the set with 3 strips of card");
    const fillOf = (recipe: typeof six) =>
      sumAmounts(recipe.steps.filter(({ job }) => job === "fill").map(({ amount }) => amount));
    const one = drafted({ carton });
    expect(fillOf(six)).toBeLessThan(fillOf(one));
    const wraps = (recipe: typeof six) => recipe.steps.filter(({ per }) => per === "piece");
    expect(wraps(six)).toEqual(wraps(one));
  });

  it("stands an inner carton in an outer one, fills the gap and tapes both", () => {
    const double = drafted({ outer: bench.cartonOf(14, 14, 14) });
    const single = drafted();
    const added = double.steps.slice(single.steps.length);
    expect(added.map(({ job }) => job)).toEqual(["fill", "box", "fill", "fill", "seal"]);
    expect(double.steps.filter(({ job }) => job === "seal")).toHaveLength(2);
    expect(double.cartons).toEqual([{ upTo: 1, supplyId: "carton-14-14-14" }]);
    expect(double.mass.mg).toBeGreaterThan(single.mass.mg);
    expect(draftedRecipe({ ...request, outer: bench.cartonOf(11, 11, 11) })).toMatchObject({
      kind: "too-tight",
      around: "carton",
      cartonId: "carton-11-11-11",
    });
  });

  it("never weighs less as a set than its pieces do without fill", () => {
    const counts = fc.integer({ min: 1, max: 8 });
    const sizes = fc.integer({ min: 50_000, max: 110_000 });
    const carton = bench.cartonOf(60, 60, 30);
    fc.assert(
      fc.property(
        counts,
        sizes,
        sizes,
        fc.constantFrom(...CUSHION_STYLES),
        (pieces, acrossUm, heightUm, style) => {
          const piece = {
            ...bench.mug,
            body: { kind: "cylinder", acrossUm, heightUm } as const,
            hollows: [],
            stickingOut: bench.mug.stickingOut.map((part) => ({ ...part, alongUm: heightUm })),
          };
          const supplies = chosenSupplies(style, shelf);
          const set = drafted({ piece, pieces, supplies, carton });
          const bare = drafted({ piece, supplies: { ...supplies, fill: null, seal: null }, carton });
          const box = drafted({ piece, supplies: bench.NO_SUPPLIES, carton }).mass.mg - 370_000;
          expect(set.mass.mg - box).toBeGreaterThanOrEqual(pieces * (bare.mass.mg - box) - pieces);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("never needs less fill in a larger carton", () => {
    const side = fc.integer({ min: 10, max: 20 });
    const fillIn = (...sides: [number, number, number]) =>
      sumAmounts(
        drafted({ carton: bench.cartonOf(...sides) })
          .steps.filter(({ job }) => job === "fill")
          .map(({ amount }) => amount),
      );
    fc.assert(
      fc.property(side, side, side, (length, width, height) => {
        expect(fillIn(length + 1, width, height)).toBeGreaterThanOrEqual(fillIn(length, width, height));
      }),
    );
  });
});
