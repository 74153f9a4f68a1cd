import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RecipeStep } from "#lib/packing/recipe-version";
import { type RecipeTakes, recipeTakes, usualBill } from "#lib/packing/usual-bill";
import { type Amount, amountFraction, amountOfUnits } from "#lib/units/amount";

// Worked out by hand from the meaning of a recipe; common practice, no source.
const step = (supplyId: string, each: Amount, per: RecipeStep["per"] = "piece"): RecipeStep => ({
  id: `${supplyId}-${per}`,
  position: 1,
  words: `Take ${supplyId}`,
  supplyId,
  amount: each,
  typedValue: "1",
  typedUnit: "sheet",
  per,
});
const takes = (perPiece: Record<string, number>, perParcel: Record<string, number> = {}): RecipeTakes => ({
  perPiece: new Map(Object.entries(perPiece)),
  perParcel: new Map(Object.entries(perParcel)),
});

describe("what a recipe takes", () => {
  it("keeps apart what is taken for each piece and once a parcel, in use units", () => {
    const found = recipeTakes({
      steps: [step("tissue", amountFraction(1, 3)), step("paper", amountOfUnits(4), "parcel")],
    });
    expect([...found.perPiece]).toEqual([["tissue", amountFraction(1, 3) / 12000]]);
    expect([...found.perParcel]).toEqual([["paper", 4]]);
  });

  it("adds up steps that take the same supply", () => {
    const found = recipeTakes({
      steps: [
        step("paper", amountOfUnits(2)),
        step("paper", amountOfUnits(3)),
        step("paper", amountOfUnits(5), "parcel"),
      ],
    });
    expect(found.perPiece.get("paper")).toBe(5);
    expect(found.perParcel.get("paper")).toBe(5);
  });
});

describe("usual bill of an item type", () => {
  it("shares what is taken once a parcel among the pieces of a parcel", () => {
    const recipes = [{ takes: takes({ tissue: 1 }, { paper: 6 }), share: 1 }];
    const bill = usualBill({ recipes, cartons: [{ supplyId: "box", share: 1 }], parcelsPerPiece: 0.5 });
    expect(Object.fromEntries(bill)).toEqual({ tissue: 1, paper: 3, box: 0.5 });
  });

  it("weighs recipes and cartons by how often they are used", () => {
    const recipes = [
      { takes: takes({ paper: 8 }), share: 0.75 },
      { takes: takes({ bubble: 2, paper: 1 }), share: 0.25 },
    ];
    const cartons = [
      { supplyId: "small", share: 0.9 },
      { supplyId: "large", share: 0.1 },
    ];
    const bill = usualBill({ recipes, cartons, parcelsPerPiece: 1 });
    // 0.75 x 8 + 0.25 x 1
    expect(bill.get("paper")).toBeCloseTo(6.25, 12);
    expect(bill.get("bubble")).toBeCloseTo(0.5, 12);
    expect(bill.get("small")).toBeCloseTo(0.9, 12);
    expect(bill.get("large")).toBeCloseTo(0.1, 12);
  });

  it("names no supply of which nothing is taken", () => {
    const recipes = [{ takes: takes({ paper: 3, tape: 0 }, { fill: 2 }), share: 1 }];
    const bill = usualBill({ recipes, cartons: [{ supplyId: "box", share: 1 }], parcelsPerPiece: 0 });
    expect([...bill.keys()]).toEqual(["paper"]);
    expect(usualBill({ recipes: [], cartons: [], parcelsPerPiece: 1 }).size).toBe(0);
  });

  it("times the pieces is what their parcels take, however many go into one", () => {
    const amounts = fc.integer({ min: 1, max: 40 });
    fc.assert(
      fc.property(amounts, amounts, amounts, amounts, (parcels, each, perPiece, perParcel) => {
        const pieces = parcels * each;
        const recipes = [{ takes: takes({ paper: perPiece }, { paper: perParcel }), share: 1 }];
        const bill = usualBill({ recipes, cartons: [], parcelsPerPiece: parcels / pieces });
        expect((bill.get("paper") ?? 0) * pieces).toBeCloseTo(perPiece * pieces + perParcel * parcels, 6);
      }),
    );
  });
});
