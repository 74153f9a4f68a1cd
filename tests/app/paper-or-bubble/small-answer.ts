import { type CushionAnswer, cushionAnswer, type KindAnswer } from "#app/paper-or-bubble/cushion-answer.ts";
import type { CushionGround } from "#app/paper-or-bubble/cushion-ground.ts";
import { comparisons } from "#lib/cushioning/comparison";
import { totalOf } from "#lib/cushioning/parcel-kind";
import type { WayCost } from "#lib/cushioning/way-cost";
import type { PackedPieces } from "#lib/cushioning/way-to-pack";
import { CUSHION_STYLES, type CushionStyle, type RecipeVersion } from "#lib/packing/recipe-version";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Supply } from "#prisma/records/supplies";
import { POUNDS, TERMS } from "../../lib/cushioning/small-ways";
import { typeOf } from "../cartons/small-shelf";

export const TODAY = day("2026-11-25");

/** A supply of which only the kind matters. */
export function supplyOfKind(id: string, kind: string, useUnit: Supply["useUnit"] = "sheet"): Supply {
  return { ...PLAIN_SUPPLY, id, name: `Some ${id}`, kind, useUnit };
}

export const SUPPLIES: readonly Supply[] = [
  supplyOfKind("sheets", "paper"),
  supplyOfKind("bubble", "bubble", "square-foot"),
  supplyOfKind("tape", "tape", "foot"),
  supplyOfKind("carton", "carton", "each"),
];

/** What a recipe takes of each supply once a parcel, into the one carton. */
export function recipeOf(
  itemTypeId: string,
  style: CushionStyle,
  takes: Readonly<Record<string, number>>,
): RecipeVersion {
  const steps = Object.entries(takes).map(([supplyId, units], position) => ({
    ...{ id: `${position}`, position, words: "", supplyId, amount: amountOfUnits(units) },
    ...{ typedValue: `${units}`, typedUnit: "", per: "parcel" as const },
  }));
  const cartons = [{ upTo: 24, supplyId: "carton" }];
  return { id: `${itemTypeId} ${style}`, itemTypeId, style, effectiveFrom: TODAY, steps, cartons };
}

/** An invented shop: mugs and tiles on paper and on bubble, pieces of 370 g, the card of a pound a step. */
export function groundOf(change: Partial<CushionGround> = {}): CushionGround {
  const itemTypes = ["mug", "tile", "vase"].map((id) => typeOf(id, null));
  const recipes = ["mug", "tile"].flatMap((id) => [
    recipeOf(id, "paper", { sheets: 10, tape: 6 }),
    recipeOf(id, "bubble", { bubble: 4, tape: 6 }),
  ]);
  const masses = new Map([...TERMS.supplyMasses, ["tape", 700] as const]);
  const { service, validFrom, validTo } = POUNDS;
  return {
    today: TODAY,
    supplies: SUPPLIES,
    itemTypes,
    zones: [],
    cards: [{ id: "pounds", card: POUNDS, service, validFrom, validTo, source: null, readOn: null }],
    zoneCounts: [
      { zoneId: "near", parcels: 30 },
      { zoneId: "far", parcels: 10 },
    ],
    offers: [],
    weeks: 6,
    expectedPieces: new Map([
      ["mug", 40],
      ["tile", 10],
    ]),
    sent: [],
    packing: {
      ...{ today: TODAY, recipes, supplyMasses: masses, weights: learnedWeights([], TODAY).known },
      pieceMasses: new Map(itemTypes.map(({ id, massMg }) => [id, massMg])),
      sizeOf: () => null,
    },
    book: new Map([...TERMS.book, ["tape", 9_000] as const]),
    replacement: new Map([...TERMS.replacement, ["tape", 10_000] as const]),
    litres: new Map(),
    hourMinor: null,
    said: { minutes: TERMS.minutes, brokenPerMille: TERMS.brokenPerMille },
    ...change,
  };
}

/** The ground with other terms of packing. */
export function groundWith(packing: Partial<CushionGround["packing"]>): CushionGround {
  const ground = groundOf();
  return { ...ground, packing: { ...ground.packing, ...packing } };
}

/** One kind of parcel with costs that are said outright. */
export function kindOf(itemTypeId: string, parcels: number, costs: readonly WayCost[]): KindAnswer {
  const pieces: PackedPieces = [{ itemTypeId, pieces: 1 }];
  return { pieces, parcels, costs, comparisons: comparisons(costs) };
}

/** An answer about such kinds, all else as the ground has it. */
export function answerOf(kinds: readonly KindAnswer[], change: Partial<CushionAnswer> = {}): CushionAnswer {
  const styles = CUSHION_STYLES.filter((style) =>
    kinds.some(({ costs }) => costs.some(({ way }) => way.style === style)),
  );
  return {
    ...cushionAnswer(groundOf(), { prices: new Map(), cardId: null }),
    kinds,
    styles,
    allIn: new Map(styles.map((style) => [style, totalOf(kinds, style)])),
    best: totalOf(kinds, "best"),
    ...change,
  };
}
