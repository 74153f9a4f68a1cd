import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { billOfMaterials } from "#lib/packing/bill";
import type { RecipeStep, RecipeVersion } from "#lib/packing/recipe-version";
import {
  type Amount,
  amount,
  amountFraction,
  amountOfUnits,
  scaleAmount,
  sumAmounts,
} from "#lib/units/amount";
import { day } from "#lib/units/day";

const step = (id: string, supplyId: string, each: Amount, change: Partial<RecipeStep> = {}): RecipeStep => ({
  id,
  position: 1,
  words: `Take ${supplyId}`,
  supplyId,
  amount: each,
  typedValue: "1/3",
  typedUnit: "sheet",
  per: "piece",
  ...change,
});

const recipe = (
  itemTypeId: string,
  steps: readonly RecipeStep[],
  cartons: RecipeVersion["cartons"] = [],
): RecipeVersion => ({
  id: itemTypeId,
  itemTypeId,
  style: "paper",
  effectiveFrom: day("2026-01-01"),
  steps,
  cartons,
});

const part = (version: RecipeVersion, pieces: number) => ({
  itemTypeId: version.itemTypeId,
  pieces,
  recipe: version,
});

const totals = (lines: readonly { supplyId: string; amount: Amount }[], supplyId: string) =>
  sumAmounts(lines.filter((line) => line.supplyId === supplyId).map((line) => line.amount));

const third = step("tissue", "tissue", amountFraction(1, 3));
const fill = (id: string, sheets: number) =>
  step(id, "paper", amountOfUnits(sheets), { per: "parcel", position: 2 });

describe("billOfMaterials", () => {
  it("takes three thirds of a sheet as exactly one", () => {
    expect(billOfMaterials({ parts: [part(recipe("mug", [third]), 3)] }).lines[0]?.amount).toBe(12000);
  });

  it("keeps the step's words, its id and what was typed for one piece", () => {
    expect(billOfMaterials({ parts: [part(recipe("mug", [third]), 1)] }).lines).toEqual([
      {
        supplyId: "tissue",
        amount: 4000,
        recipeStepId: "tissue",
        words: "Take tissue",
        typedValue: "1/3",
        typedUnit: "sheet",
      },
    ]);
  });

  it("says how often what was typed is taken for several pieces", () => {
    expect(billOfMaterials({ parts: [part(recipe("mug", [third]), 6)] }).lines[0]?.typedValue).toBe(
      "6 × 1/3",
    );
  });

  it("takes wraps by the piece and fill once, for a set of six (common practice, no source)", () => {
    const { lines } = billOfMaterials({ parts: [part(recipe("glass", [third, fill("fill", 10)]), 6)] });
    expect([totals(lines, "tissue"), totals(lines, "paper")]).toEqual([amountOfUnits(2), amountOfUnits(10)]);
  });

  it("takes the largest fill over the item types of a mixed parcel, not their sum", () => {
    const mug = recipe("mug", [third, fill("mug-fill", 7)]);
    const vase = recipe("vase", [fill("vase-fill", 12), fill("vase-top", 15)]);
    const { lines } = billOfMaterials({ parts: [part(mug, 2), part(vase, 1)] });
    expect(totals(lines, "paper")).toBe(amountOfUnits(27));
    expect(lines.map((line) => line.recipeStepId)).toEqual(["tissue", "vase-fill", "vase-top"]);
  });

  it("takes the fill of the earlier part where two ask for as much", () => {
    const parts = [part(recipe("mug", [fill("first", 7)]), 1), part(recipe("cup", [fill("second", 7)]), 1)];
    expect(billOfMaterials({ parts }).lines.map((line) => line.recipeStepId)).toEqual(["first"]);
  });

  it("chooses among recipes for each supply by itself", () => {
    const tape = (id: string, feet: number) => step(id, "tape", amountOfUnits(feet), { per: "parcel" });
    const parts = [
      part(recipe("mug", [fill("mug-fill", 7), tape("mug-tape", 8)]), 1),
      part(recipe("cup", [fill("cup-fill", 9), tape("cup-tape", 6)]), 1),
    ];
    expect(billOfMaterials({ parts }).lines.map((line) => line.recipeStepId)).toEqual([
      "mug-tape",
      "cup-fill",
    ]);
  });

  it("orders the lines by the position of their steps", () => {
    const steps = [
      { ...third, id: "last", position: 3 },
      fill("middle", 7),
      { ...third, id: "first", position: 1 },
    ];
    const { lines } = billOfMaterials({ parts: [part(recipe("mug", steps), 1)] });
    expect(lines.map((line) => line.recipeStepId)).toEqual(["first", "middle", "last"]);
  });

  it("takes nothing for an empty parcel", () => {
    expect(billOfMaterials({ parts: [] })).toEqual({ lines: [], cartons: [], over: false });
  });

  it.each([0, -1, 0.5])("refuses %s pieces", (pieces) => {
    expect(() => billOfMaterials({ parts: [part(recipe("mug", [third]), pieces)] })).toThrow(
      `billOfMaterials requires whole pieces from 1, got ${pieces}`,
    );
  });
});

describe("the carton of a bill", () => {
  const mug = recipe(
    "mug",
    [],
    [
      { upTo: 4, supplyId: "cube-12" },
      { upTo: 1, supplyId: "cube-8" },
    ],
  );
  const bowl = recipe("bowl", [], [{ upTo: 6, supplyId: "cube-14" }]);

  it("is the first that takes all pieces", () => {
    expect(billOfMaterials({ parts: [part(mug, 1)] }).cartons).toEqual(["cube-8"]);
    expect(billOfMaterials({ parts: [part(mug, 2)] }).cartons).toEqual(["cube-12"]);
  });

  it("comes from the list of the leading item type, by all pieces of the parcel", () => {
    expect(billOfMaterials({ parts: [part(bowl, 1), part(mug, 2)] }).cartons).toEqual(["cube-12"]);
  });

  it("comes from the first list where two item types have as many pieces", () => {
    expect(billOfMaterials({ parts: [part(bowl, 1), part(mug, 1)] }).cartons).toEqual(["cube-14"]);
  });

  it("is the largest, and says so, where the list does not cover the pieces", () => {
    expect(billOfMaterials({ parts: [part(mug, 5)] })).toMatchObject({ cartons: ["cube-12"], over: true });
  });

  it("is the chosen one where one was chosen", () => {
    const parts = [part(mug, 5)];
    expect(billOfMaterials({ parts, carton: { supplyId: "tall" } })).toMatchObject({
      cartons: ["tall"],
      over: false,
    });
  });

  it("is none from stock where a saved carton was taken", () => {
    expect(billOfMaterials({ parts: [part(mug, 1)], carton: null }).cartons).toEqual([]);
  });

  it("may be two, from the outside in", () => {
    const cartons = ["cube-12", "cube-8"];
    expect(billOfMaterials({ parts: [part(mug, 1)], cartons }).cartons).toEqual(cartons);
  });
});

describe("the sum of a bill", () => {
  const steps = fc.array(
    fc.record({
      parts: fc.nat(120_000),
      supply: fc.constantFrom("tissue", "paper", "tape"),
      once: fc.boolean(),
    }),
    { maxLength: 8 },
  );
  const parts = fc.array(fc.tuple(steps, fc.integer({ min: 1, max: 12 })), { maxLength: 5 }).map((list) =>
    list.map(([drawn, pieces], index) => {
      const made = drawn.map(({ parts: each, supply, once }, place) =>
        step(`${index}-${place}`, supply, amount(each), { per: once ? "parcel" : "piece", position: place }),
      );
      return part(recipe(`type-${index}`, made), pieces);
    }),
  );
  const perParcel = (version: RecipeVersion, supplyId: string, per: string) =>
    sumAmounts(
      version.steps
        .filter((each) => each.per === per && each.supplyId === supplyId)
        .map((each) => each.amount),
    );

  it("is the pieces' steps times the pieces and the largest of the parcel's steps", () => {
    fc.assert(
      fc.property(parts, (list) => {
        const byPiece = list.map((each) =>
          scaleAmount(perParcel(each.recipe, "paper", "piece"), each.pieces),
        );
        const once = Math.max(0, ...list.map((each) => perParcel(each.recipe, "paper", "parcel")));
        expect(totals(billOfMaterials({ parts: list }).lines, "paper")).toBe(sumAmounts(byPiece) + once);
      }),
    );
  });

  it("names each step at most once", () => {
    fc.assert(
      fc.property(parts, (list) => {
        const ids = billOfMaterials({ parts: list }).lines.map((line) => line.recipeStepId);
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });
});
