import type { WayCost, WayTerms } from "#lib/cushioning/way-cost";
import type { WayToPack } from "#lib/cushioning/way-to-pack";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PackedWeight } from "#lib/packing/weight/packed-weight";
import type { RateCard } from "#lib/postage/rate-card";
import { day } from "#lib/units/day";
import { milligrams } from "#lib/units/mass";
import { minorUnits } from "#lib/units/money";
import { plainBand, plainCard, stepUpTo, typed } from "../postage/rate-card-fixture";

export const GRAM = 1_000;
/** 0.45359237 kg by the agreement of 1959. */
export const POUND = 453_592.37;

/** An invented card: 1 to 4 lb in two zones, then 2.00 and 4.00 for each pound begun. */
export const POUNDS: RateCard = plainCard({
  currency: "USD",
  zones: ["near", "far"],
  bands: [
    plainBand(
      [
        stepUpTo("1", "lb", [500, 800]),
        stepUpTo("2", "lb", [700, 1_200]),
        stepUpTo("3", "lb", [900, 1_600]),
        stepUpTo("4", "lb", [1_100, 2_000]),
      ],
      {
        beyond: {
          kind: "perFurther",
          each: typed("1", "lb"),
          prices: [minorUnits(200), minorUnits(400)],
        },
      },
    ),
  ],
});

/** The same up to 4 lb, and nothing heavier is taken. */
export const UP_TO_FOUR: RateCard = {
  ...POUNDS,
  bands: POUNDS.bands.map((band) => ({ ...band, beyond: { kind: "notCarried" } })),
};

/** Paper 8 cents a sheet, bubble 25 cents a square foot, a carton a dollar; three parcels of four stay near. */
export const TERMS: WayTerms = {
  book: new Map([
    ["sheets", 70_000],
    ["bubble", 200_000],
    ["carton", 900_000],
  ]),
  replacement: new Map([
    ["sheets", 80_000],
    ["bubble", 250_000],
    ["carton", 1_000_000],
  ]),
  card: POUNDS,
  zones: [
    { zone: "near", share: 3 },
    { zone: "far", share: 1 },
  ],
  shipDay: day("2026-11-25"),
  hourMinor: null,
  minutes: { paper: null, bubble: null, mixed: null },
  brokenPerMille: { paper: null, bubble: null, mixed: null },
  litres: new Map(),
  isPaper: (id) => id !== "bubble",
  supplyMasses: new Map([
    ["sheets", 27_000],
    ["bubble", 8_000],
    ["carton", 200_000],
  ]),
};

/** What a parcel may weigh: a bell that was learned from a dozen parcels. */
export function bell(meanMg: number, deviationMg = 40 * GRAM): PackedWeight {
  const rounded = milligrams(Math.round(meanMg));
  return {
    predictedMg: meanMg,
    likelyMg: rounded,
    meanMg: rounded,
    deviationMg,
    parcels: 12,
    basis: "group",
    guess: false,
    parts: [{ weight: 1, centre: meanMg, scale: deviationMg, degrees: null }],
  };
}

/** A way with what it takes, beside one carton if not said otherwise. */
export function wayOf(
  style: CushionStyle,
  takes: Readonly<Record<string, number>>,
  change: Partial<WayToPack> = {},
): WayToPack {
  return {
    style,
    takes: new Map([["carton", 1], ...Object.entries(takes)]),
    cartons: ["carton"],
    isOverfull: false,
    size: null,
    weight: null,
    packingMg: 300 * GRAM,
    contentsMg: 500 * GRAM,
    unweighed: [],
    ...change,
  };
}

/** Ten sheets; one deviation of 40 g over 2 lb. */
export const PAPER = wayOf("paper", { sheets: 10 }, { weight: bell(2 * POUND + 40 * GRAM) });
/** Four square feet; two deviations under 2 lb. */
export const BUBBLE = wayOf("bubble", { bubble: 4 }, { weight: bell(2 * POUND - 80 * GRAM) });
/** Five sheets and two square feet; 2 lb as likely over as under. */
export const MIXED = wayOf("mixed", { sheets: 5, bubble: 2 }, { weight: bell(2 * POUND) });

/** A way whose cost is said outright, all of it materials; its postage is not known. */
export function plainCost(
  style: CushionStyle,
  totalMinor: number,
  takes: Readonly<Record<string, number>> = {},
  change: Partial<WayCost> = {},
): WayCost {
  return {
    way: wayOf(style, takes),
    bookMinor: totalMinor,
    materialsMinor: totalMinor,
    postage: null,
    postageMinor: null,
    minutesMinor: null,
    breakageMinor: null,
    postagesPaid: 1,
    totalMinor,
    litres: null,
    paperShare: null,
    unpriced: [],
    ...change,
  };
}
