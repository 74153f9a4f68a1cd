import { describe, expect, it } from "vitest";
import { cardSum } from "#lib/packing/card-sum";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const CENT = 10_000;
const step = (supplyId: string, units: number, per: "piece" | "parcel") => ({
  id: `${supplyId}-${per}`,
  position: 0,
  words: supplyId,
  supplyId,
  amount: amountOfUnits(units),
  typedValue: String(units),
  typedUnit: "",
  per,
});
const card: RecipeVersion = {
  id: "mug-1",
  itemTypeId: "mug",
  style: "paper",
  effectiveFrom: day("2026-01-01"),
  steps: [step("bubble", 4, "piece"), step("paper", 7, "parcel")],
  cartons: [
    { upTo: 1, supplyId: "small" },
    { upTo: 2, supplyId: "large" },
  ],
};
const terms = {
  masses: new Map([
    ["bubble", 4_600],
    ["paper", 27_200],
    ["small", 197_000],
    ["large", 278_000],
  ]),
  book: new Map([
    ["bubble", 14 * CENT],
    ["paper", 7 * CENT],
    ["small", 80 * CENT],
    ["large", 100 * CENT],
  ]),
  replacement: new Map([
    ["bubble", 15 * CENT],
    ["paper", 8 * CENT],
    ["small", 90 * CENT],
  ]),
};

// Worked by hand: 370 + 4 x 4.6 + 7 x 27.2 + 197 g; 4 x 14 + 7 x 7 + 80 c; 4 x 15 + 7 x 8 + 90 c.
describe("what a parcel by a card weighs and costs", () => {
  it("is the piece, its steps and its carton", () => {
    expect(cardSum(card, 1, 370_000, terms)).toEqual({
      mass: { mg: 775_800, unknown: [] },
      book: { cost: 185 * CENT, unknown: [] },
      replacement: { cost: 206 * CENT, unknown: [] },
      cartons: ["small"],
    });
  });

  it("takes wraps by the piece, fill by the parcel, and the carton for so many", () => {
    const two = cardSum(card, 2, 370_000, terms);
    expect(two.mass.mg).toBe(2 * 370_000 + 8 * 4_600 + 7 * 27_200 + 278_000);
    expect(two.replacement).toEqual({ cost: (8 * 15 + 7 * 8) * CENT, unknown: ["large"] });
  });

  it("names a piece that was never weighed", () => {
    expect(cardSum(card, 1, null, terms).mass).toEqual({ mg: 405_800, unknown: ["mug"] });
  });
});
