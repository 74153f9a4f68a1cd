import type { StepPrices } from "#app/pack/step-prices.ts";
import { stepPrices } from "#app/pack/step-prices.ts";
import type { RateCard } from "#lib/postage/rate-card";
import { NO_WALLS } from "#lib/postage/size-walls";
import { type MassUnit, type TypedMass, typedMeasure } from "#lib/postage/typed-measure";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";

/** The day on which the invented card is asked. */
export const SHIP_DAY = day("2026-03-10");

/** An invented card: to 8 oz, 1 lb and 2 lb, near and far. */
export const BENCH_CARD: RateCard = {
  service: "Parcels",
  currency: "USD",
  validFrom: day("2026-01-01"),
  validTo: null,
  zones: ["near", "far"],
  bands: [
    {
      name: "",
      walls: NO_WALLS,
      countsSize: true,
      steps: [
        { upTo: typed("8", "oz"), prices: [400, 500].map(minorUnits) },
        { upTo: typed("1", "lb"), prices: [600, 900].map(minorUnits) },
        { upTo: typed("2", "lb"), prices: [800, 1_300].map(minorUnits) },
      ],
      beyond: { kind: "notCarried" },
    },
  ],
  roundUpTo: null,
  dimensional: null,
  fees: [],
};

/** Three of four parcels go near. */
export const BENCH_PRICES: StepPrices = priced();

function priced(): StepPrices {
  const zones = [
    { zone: "near", share: 3 },
    { zone: "far", share: 1 },
  ];
  const prices = stepPrices(BENCH_CARD, zones, new Map(), { shipDay: SHIP_DAY, untilMg: 5_000_000 });
  if (prices === null) throw new TypeError("the bench's card gave no prices");
  return prices;
}

function typed(text: string, unit: MassUnit): TypedMass {
  const measure = typedMeasure(text, unit, "imperial");
  if (measure === null) throw new TypeError(`${text} is no number`);
  return measure;
}
