import { comparisons } from "#lib/cushioning/comparison";
import { type WayTerms, wayCost } from "#lib/cushioning/way-cost";
import { type PackingGround, waysToPack } from "#lib/cushioning/ways-to-pack";
import { CUSHION_STYLES, type RecipeVersion } from "#lib/packing/recipe-version";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import type { WeighedParcel } from "#lib/packing/weight/weighed-parcel";
import { parcelSize } from "#lib/postage/parcel-size";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { MICROMETRES_PER_INCH, micrometres } from "#lib/units/length";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { benchCard } from "../postage/bench-card";

const TODAY = day("2026-03-02");
const TYPES = 20;
const SUPPLIES = 12;
const WEIGHED = 30;
const GRAM = 1_000;
const RUNS = 25;
const TARGET_MS = 50;
const MEDIAN = 0.5;
const NOT_SAID = { paper: null, bubble: null, mixed: null };

/** All item types in all styles to all zones: ways, weights, postage, and which is cheaper. */
export function comparisonSpeed(): Measurement[] {
  const ground = benchGround();
  const terms = benchTerms();
  const compared = (): number => {
    const began = performance.now();
    for (const { itemTypeId, style } of ground.recipes) {
      if (style !== "paper") continue;
      const ways = waysToPack([{ itemTypeId, pieces: 1 }], ground);
      comparisons(ways.map((way) => wayCost(way, terms, null)));
    }
    return performance.now() - began;
  };
  const cold = compared();
  const warm = Array.from({ length: RUNS }, compared);
  const of = (name: string, value: number, target: number | null) =>
    measurement({ area: "cushioning", name, value, unit: "ms", target });
  return [
    of("20 item types x 3 styles x 9 zones compared (median)", nearestRank(warm, MEDIAN), TARGET_MS),
    of("the same, the first time", cold, null),
  ];
}

function benchGround(): PackingGround {
  const types = Array.from({ length: TYPES }, (_, type) => type);
  return {
    today: TODAY,
    recipes: types.flatMap((type) => CUSHION_STYLES.map((style, at) => recipe(type, style, at))),
    pieceMasses: new Map(types.map((type) => [`type-${type}`, GRAM * (250 + 210 * type)])),
    supplyMasses: new Map([
      ...Array.from({ length: SUPPLIES }, (_, at) => [`supply-${at}`, GRAM * (3 + 2 * at)] as const),
      ...types.map((type) => [`carton-${type}`, GRAM * (190 + 20 * type)] as const),
    ]),
    weights: learnedWeights(types.flatMap(weighed), TODAY).known,
    sizeOf: (cartonId) => {
      const long = 8 + Number(cartonId.slice("carton-".length));
      const um = [long, long * 0.7, long * 0.45].map((side) => Math.round(side * MICROMETRES_PER_INCH));
      return parcelSize(um.map(micrometres), null, "box");
    },
  };
}

function recipe(type: number, style: RecipeVersion["style"], at: number): RecipeVersion {
  return {
    id: `recipe-${type}-${style}`,
    itemTypeId: `type-${type}`,
    style,
    effectiveFrom: day("2025-01-01"),
    cartons: [{ upTo: 4, supplyId: `carton-${type}` }],
    steps: Array.from({ length: 6 }, (_, step) => ({
      id: `step-${type}-${style}-${step}`,
      position: step,
      words: "wrap",
      supplyId: `supply-${(step + 3 * at) % SUPPLIES}`,
      amount: amountOfUnits(1 + step),
      typedValue: String(1 + step),
      typedUnit: "sheet",
      per: "parcel" as const,
    })),
  };
}

function weighed(type: number): WeighedParcel[] {
  return Array.from({ length: WEIGHED }, (_, at): WeighedParcel => {
    const style = CUSHION_STYLES[at % CUSHION_STYLES.length] ?? "paper";
    const predictedMg = GRAM * (600 + 220 * type);
    return {
      itemTypeId: `type-${type}`,
      cartonId: `carton-${type}`,
      style,
      packedOn: TODAY,
      predictedMg,
      scaleMg: Math.round(predictedMg * (1 + 0.08 * (((at * 7) % 11) / 11 - 0.4))),
      unusual: false,
    };
  });
}

function benchTerms(): WayTerms {
  const card = benchCard();
  const prices = new Map([
    ...Array.from({ length: SUPPLIES }, (_, at) => [`supply-${at}`, 30_000 + 20_000 * at] as const),
    ...Array.from({ length: TYPES }, (_, type) => [`carton-${type}`, 800_000 + 50_000 * type] as const),
  ]);
  return {
    book: prices,
    replacement: prices,
    card,
    zones: card.zones.map((zone, at) => ({ zone, share: 1 + at })),
    shipDay: TODAY,
    hourMinor: null,
    minutes: NOT_SAID,
    brokenPerMille: NOT_SAID,
    litres: new Map(),
    isPaper: (supplyId) => supplyId.endsWith("0"),
    supplyMasses: new Map(),
  };
}
