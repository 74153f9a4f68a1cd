import { describe, expect, it } from "vitest";
import { differenceWords, stepsWords } from "#app/pack/difference-words.ts";
import { expectedWeight } from "#app/pack/expected-weight.ts";
import { filledCard } from "#app/pack/filled-card.ts";
import type { PackingChoices } from "#app/pack/packing-choices.ts";
import { draftFor, type PackingDraft } from "#app/pack/packing-draft.ts";
import { type BenchWay, styleDifference } from "#app/pack/style-difference.ts";
import { weightOutlook } from "#app/pack/weight-outlook.ts";
import { amountOfUnits } from "#lib/units/amount";
import { BENCH_PRICES } from "./bench-postage";
import { SMALL_CHOICES } from "./small-choices";

/** The mug on paper takes 20 sheets of 4 g, on bubble 5 sq ft of 4 g; pieces, tissue, tape and carton weigh 375 g. */
const choices: PackingChoices = {
  ...SMALL_CHOICES,
  supplies: SMALL_CHOICES.supplies.map((supply) =>
    supply.id === "paper" || supply.id === "bubble" ? { ...supply, massMg: 4_000 } : supply,
  ),
  recipes: SMALL_CHOICES.recipes.flatMap((recipe) => [
    { ...recipe, steps: [...recipe.steps, fill("paper", 20)] },
    ...(recipe.itemTypeId === "mug"
      ? [
          {
            ...recipe,
            id: "mug-bubble",
            style: "bubble" as const,
            steps: [...recipe.steps, fill("bubble", 5)],
          },
        ]
      : []),
  ]),
  unitPrices: {
    tissue: 30_000,
    tape: 20_000,
    paper: 70_000,
    bubble: 500_000,
    "cube-8": 900_000,
    "cube-12": 1_200_000,
  },
  stepPrices: BENCH_PRICES,
};

function fill(supplyId: string, units: number) {
  const amount = amountOfUnits(units);
  const typed = { typedValue: String(units), typedUnit: "" };
  return {
    id: `fill-${supplyId}`,
    position: 3,
    words: "Fill",
    supplyId,
    amount,
    ...typed,
    per: "parcel" as const,
  };
}

function ways(draft: PackingDraft, of = choices): readonly BenchWay[] {
  return styleDifference(draft, weightOutlook(draft, expectedWeight(draft, of), of), of);
}

const mug = { ...draftFor(choices, "mug", "parcel", choices.today), zoneId: null };

describe("the parcel on the bench in its other styles", () => {
  it("is reckoned with its own carton as it is, and with the card's in the other style", () => {
    const [here, other, ...more] = ways(mug);
    expect(more).toEqual([]);
    expect([here?.style, other?.style]).toEqual(["paper", "bubble"]);
    // By hand: tissue 1/3 x 3 c + tape 3 x 2 c + paper 20 x 7 c + carton 120 c = 267 c.
    expect(here?.materialsMinor).toBeCloseTo(267, 6);
    // Tissue 1 c + tape 6 c + bubble 5 x 50 c + the card's own carton 90 c = 347 c.
    expect(other?.materialsMinor).toBeCloseTo(347, 6);
  });

  it("pays each step with its chance, three quarters near and a quarter far", () => {
    const [here, other] = ways(mug);
    const sum = (way?: BenchWay) => (way?.steps ?? []).reduce((all, { chance }) => all + chance, 0);
    expect(sum(here)).toBeCloseTo(1, 2);
    expect(sum(other)).toBeCloseTo(1, 2);
    const share = (way: BenchWay | undefined, label: string) =>
      way?.steps.find((step) => step.label === label)?.chance ?? 0;
    // 375 g and 80 g stand about 1 lb (453.6 g); 395 g well under it. Near and far cost 675 c at 1 lb, 925 c at 2 lb.
    const [heavy, light] = [share(here, "up to 2 lb"), share(other, "up to 2 lb")];
    expect(heavy).toBeGreaterThan(0.4);
    expect(light).toBeLessThan(0.2);
    expect(here?.postageMinor).toBeCloseTo(675 * (1 - heavy) + 925 * heavy, 0);
    expect(other?.postageMinor).toBeCloseTo(675 * (1 - light) + 925 * light, 0);
  });

  it("pays to the zone that was chosen alone", () => {
    const [near] = ways({ ...mug, zoneId: "near" });
    const [far] = ways({ ...mug, zoneId: "far" });
    expect(near?.postageMinor).toBeLessThan(800);
    expect(far?.postageMinor).toBeGreaterThan(900);
  });

  it("says nothing without another card, a price, a weight or a rate card", () => {
    expect(ways({ ...draftFor(choices, "vase", "parcel", choices.today) })).toEqual([]);
    const { paper: _, ...unpriced } = choices.unitPrices;
    expect(ways(mug, { ...choices, unitPrices: unpriced })).toEqual([]);
    expect(ways(mug, { ...choices, stepPrices: null })).toEqual([]);
    const both = [
      { itemTypeId: "mug", pieces: 1 },
      { itemTypeId: "vase", pieces: 1 },
    ];
    expect(ways(filledCard({ ...mug, pieces: both }, choices))).toEqual([]);
  });
});

describe("the words of the difference", () => {
  const here: BenchWay = {
    style: "paper",
    materialsMinor: 266,
    postageMinor: 1_376,
    likelyMg: 1_410_000,
    steps: [
      { label: "up to 3 lb", chance: 0.05 },
      { label: "up to 4 lb", chance: 0.95 },
    ],
  };
  const other: BenchWay = {
    style: "bubble",
    materialsMinor: 347,
    postageMinor: 1_220,
    likelyMg: 1_286_000,
    steps: [{ label: "up to 3 lb", chance: 1 }],
  };

  it("say what the other style costs more or less, part by part", () => {
    expect(differenceWords(here, other, choices, "Far")).toBe(
      "On bubble it would cost $0.75 less in materials and postage: $0.81 more for materials, $1.56 less postage expected to Far; 4.4 oz lighter.",
    );
    expect(differenceWords(other, here, choices, null)).toBe(
      "On paper it would cost $0.75 more in materials and postage: $0.81 less for materials, $1.56 more postage expected over your zones; 4.4 oz heavier.",
    );
  });

  it("never call a step the same where the spread crosses one", () => {
    expect(stepsWords(here)).toBe("On paper: up to 3 lb 5 in 100, up to 4 lb 95 in 100.");
    expect(stepsWords(other)).toBe("On bubble: up to 3 lb more than 99 in 100.");
  });
});
