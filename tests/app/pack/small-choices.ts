import type { PackingChoices, SupplyChoice } from "#app/pack/packing-choices.ts";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";

const EACH: SupplyChoice = {
  id: "",
  name: "",
  kind: "",
  unit: "sheet",
  massMg: 1000,
  sizes: null,
  onHand: null,
  draft: null,
};

/** An invented shop with two item types, two recipes and a few supplies, as the packing desk sees it. */
export const SMALL_CHOICES: PackingChoices = {
  today: day("2026-03-10"),
  timeZone: "Etc/UTC",
  measures: "imperial",
  currency: "USD",
  minorDigits: 2,
  defaultStyle: "paper",
  itemTypes: [
    { id: "mug", name: "Mug", massMg: 370_000, recent: 9 },
    { id: "vase", name: "Bud vase", massMg: null, recent: 2 },
  ],
  supplies: [
    { ...EACH, id: "tissue", name: "Tissue", kind: "tissue" },
    { ...EACH, id: "paper", name: "Packing paper", kind: "paper" },
    { ...EACH, id: "gift-wrap", name: "Gift wrap", kind: "paper", massMg: null },
    { ...EACH, id: "kraft", name: "Kraft paper", kind: "paper", unit: "foot" },
    { ...EACH, id: "bubble", name: "Bubble", kind: "bubble", unit: "square-foot" },
    { ...EACH, id: "foam", name: "Foam", kind: "fill", unit: "each" },
    { ...EACH, id: "tape", name: "Carton tape", kind: "tape", unit: "foot" },
    { ...EACH, id: "cube-8", name: "Carton 8", kind: "carton", unit: "each", sizes: "8 × 8 × 8" },
    { ...EACH, id: "cube-12", name: "Carton 12", kind: "carton", unit: "each", sizes: "12 × 12 × 12" },
  ],
  zones: [{ id: "near", name: "Near" }],
  recipes: ["mug", "vase"].map((itemTypeId) => ({
    id: `${itemTypeId}-paper`,
    itemTypeId,
    style: "paper" as const,
    effectiveFrom: day("2026-01-01"),
    steps: [
      {
        id: `${itemTypeId}-wrap`,
        position: 1,
        words: "Wrap",
        supplyId: "tissue",
        amount: amount(AMOUNT_PER_UNIT / 3),
        typedValue: "1/3",
        typedUnit: "sheet",
        per: "piece" as const,
      },
      {
        id: `${itemTypeId}-close`,
        position: 2,
        words: "Close",
        supplyId: "tape",
        amount: amount(3 * AMOUNT_PER_UNIT),
        typedValue: "36",
        typedUnit: "in",
        per: "parcel" as const,
      },
    ],
    cartons: [
      { upTo: 2, supplyId: "cube-8" },
      { upTo: 4, supplyId: "cube-12" },
    ],
  })),
  substitutes: [],
  useFirst: [],
  weights: learnedWeights([], day("2026-03-10")).known,
  steps: [],
  unitPrices: {},
  stepPrices: null,
  promiseShare: 0.9,
  newestLine: 0,
  likely: [{ itemTypeId: "mug", pieces: 1, style: "paper", cartonId: "cube-12", zoneId: "near" }],
};
