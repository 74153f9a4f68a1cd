import { describe, expect, it } from "vitest";
import { type PackingGround, waysToPack } from "#lib/cushioning/ways-to-pack";
import type { CushionStyle, RecipeStep, RecipeVersion } from "#lib/packing/recipe-version";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { packedWeightQuantile } from "#lib/packing/weight/packed-weight";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { sized } from "../postage/rate-card-fixture";

const TODAY = day("2026-11-25");
const SIZE = sized("12 x 9 x 8 in");

type Taken = readonly [supplyId: string, units: number, per: RecipeStep["per"]];

function recipe(itemTypeId: string, style: CushionStyle, taken: readonly Taken[]): RecipeVersion {
  const steps = taken.map(([supplyId, units, per], position): RecipeStep => {
    const amount = amountOfUnits(units);
    return {
      id: `${position}`,
      position,
      words: "",
      supplyId,
      amount,
      typedValue: `${units}`,
      typedUnit: "",
      per,
    };
  });
  const cartons = [
    { upTo: 1, supplyId: "carton-6" },
    { upTo: 2, supplyId: "carton-8" },
  ];
  return {
    id: `${itemTypeId} ${style}`,
    itemTypeId,
    style,
    effectiveFrom: day("2026-01-01"),
    steps,
    cartons,
  };
}

// Invented cards: half a sheet of tissue a piece, fill once a parcel.
const MUG_PAPER = recipe("mug", "paper", [
  ["tissue", 0.5, "piece"],
  ["paper", 2, "parcel"],
  ["paper", 5, "parcel"],
]);
const MUG_BUBBLE = recipe("mug", "bubble", [
  ["tissue", 0.5, "piece"],
  ["bubble", 3, "parcel"],
]);
const BOWL_PAPER = recipe("bowl", "paper", [
  ["tissue", 1, "piece"],
  ["paper", 9, "parcel"],
]);
const GROUND: PackingGround = {
  today: TODAY,
  recipes: [MUG_BUBBLE, MUG_PAPER, BOWL_PAPER],
  pieceMasses: new Map([
    ["mug", 370_000],
    ["bowl", 800_000],
  ]),
  supplyMasses: new Map([
    ["tissue", 6_600],
    ["paper", 27_200],
    ["bubble", 7_900],
    ["carton-6", 120_000],
    ["carton-8", 197_000],
  ]),
  weights: learnedWeights([], TODAY).known,
  sizeOf: (id) => (id === "carton-8" ? SIZE : null),
};
const mugs = (pieces: number) => [{ itemTypeId: "mug", pieces }];

describe("the ways to pack a parcel", () => {
  it("are the styles in which its pieces have a recipe, in the order of the styles", () => {
    expect(waysToPack(mugs(1), GROUND).map(({ style }) => style)).toEqual(["paper", "bubble"]);
    const one = [{ itemTypeId: "bowl", pieces: 1 }];
    expect(waysToPack(one, GROUND).map(({ style }) => style)).toEqual(["paper"]);
    expect(waysToPack([{ itemTypeId: "clock", pieces: 1 }], GROUND)).toEqual([]);
    expect(waysToPack([], GROUND)).toEqual([]);
  });

  it("take wraps by the piece, fill by the parcel, and the carton for so many pieces", () => {
    const [paper, bubble] = waysToPack(mugs(2), GROUND);
    expect(Object.fromEntries(paper?.takes ?? [])).toEqual({ tissue: 1, paper: 7, "carton-8": 1 });
    expect(Object.fromEntries(bubble?.takes ?? [])).toEqual({ tissue: 1, bubble: 3, "carton-8": 1 });
    expect([paper?.cartons, paper?.size]).toEqual([["carton-8"], SIZE]);
    expect(waysToPack(mugs(1), GROUND)[0]).toMatchObject({ cartons: ["carton-6"], size: null });
  });

  it("weigh what the bill weighs, with nothing learned yet a guess", () => {
    const [paper, bubble] = waysToPack(mugs(2), GROUND);
    // 1 x 6.6 + 7 x 27.2 + 197 = 394 g of packing about 740 g of mugs
    expect(paper).toMatchObject({ packingMg: 394_000, contentsMg: 740_000, unweighed: [] });
    expect(paper?.weight).toMatchObject({ predictedMg: 1_134_000, guess: true, parcels: 0 });
    // 6.6 + 3 x 7.9 + 197
    expect(bubble?.packingMg).toBe(227_300);
    const weight = paper?.weight ?? null;
    // Nine in ten within a tenth of the weight: common practice, no source.
    const ninth = weight === null ? Number.NaN : packedWeightQuantile(weight, 0.9);
    expect(Math.abs(ninth - 1_134_000 * 1.1)).toBeLessThan(3);
  });

  it("are learned from parcels of the same item type, carton and style", () => {
    const parcels = Array.from({ length: 12 }, (_, at) => ({
      ...{ itemTypeId: "mug", cartonId: "carton-8", style: "paper" as const, unusual: false },
      packedOn: addDays(TODAY, at - 20),
      predictedMg: 1_134_000,
      scaleMg: 1_180_000 + at * 1_000,
    }));
    const weights = learnedWeights(parcels, TODAY).known;
    const [paper, bubble] = waysToPack(mugs(2), { ...GROUND, weights });
    expect(paper?.weight).toMatchObject({ parcels: 12, basis: "group", guess: false });
    expect(paper?.weight?.likelyMg).toBeGreaterThan(1_160_000);
    expect(bubble?.weight?.basis).toBe("item-type");
  });

  it("have no weight where a piece or a supply was never weighed, and name it", () => {
    const supplyMasses = new Map([...GROUND.supplyMasses, ["paper", null] as const]);
    const [paper, bubble] = waysToPack(mugs(2), { ...GROUND, supplyMasses });
    expect(paper).toMatchObject({ weight: null, unweighed: ["paper"], packingMg: 6_600 + 197_000 });
    expect(bubble?.weight).not.toBeNull();
    const pieceMasses = new Map([["mug", null]]);
    for (const way of waysToPack(mugs(2), { ...GROUND, pieceMasses })) {
      expect(way).toMatchObject({ weight: null, unweighed: ["mug"], contentsMg: 0 });
    }
  });

  it("have neither weight nor size where the card names no carton", () => {
    const bare = { ...MUG_PAPER, cartons: [] };
    const [paper] = waysToPack(mugs(1), { ...GROUND, recipes: [bare] });
    expect(paper).toMatchObject({ cartons: [], size: null, weight: null, unweighed: [] });
    expect(paper?.takes.has("carton-6")).toBe(false);
  });

  it("need a recipe of every piece in the parcel; the fill of the card that asks for most is taken once", () => {
    const both = [
      { itemTypeId: "mug", pieces: 1 },
      { itemTypeId: "bowl", pieces: 1 },
    ];
    const ways = waysToPack(both, GROUND);
    expect(ways.map(({ style }) => style)).toEqual(["paper"]);
    expect(Object.fromEntries(ways[0]?.takes ?? [])).toEqual({ tissue: 1.5, paper: 9, "carton-8": 1 });
    expect(ways[0]?.contentsMg).toBe(1_170_000);
  });

  it("go by the recipe that holds today", () => {
    const later = { ...MUG_PAPER, id: "later", effectiveFrom: addDays(TODAY, 1), steps: [] };
    const sooner = { ...MUG_BUBBLE, id: "sooner", effectiveFrom: TODAY, steps: MUG_BUBBLE.steps.slice(0, 1) };
    const [paper, bubble] = waysToPack(mugs(1), { ...GROUND, recipes: [...GROUND.recipes, later, sooner] });
    expect(paper?.takes.get("paper")).toBe(7);
    expect(bubble?.takes.has("bubble")).toBe(false);
  });

  it.each([0, -1, 1.5])("refuse %s pieces", (pieces) => {
    expect(() => waysToPack(mugs(pieces), GROUND)).toThrow(/whole pieces from 1/);
  });
});
