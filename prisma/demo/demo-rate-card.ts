import type { RateBand, RateCard } from "#lib/postage/rate-card";
import { ratio } from "#lib/postage/ratio";
import { NO_WALLS } from "#lib/postage/size-walls";
import { type LengthUnit, type MassUnit, type TypedMeasure, typedMeasure } from "#lib/postage/typed-measure";
import { addDays, type Day, day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { DEMO_SHOP, DEMO_ZONES } from "#prisma/demo/demo-terms";
import type { KeptRateCard } from "#prisma/records/rate-cards";

const MOST_POUNDS = 30;
/** How much dearer the card of next year is, minor units: to begin with, and each pound. */
const RISE = { start: 30, pound: 5 };
const LETTER_STEPS = ["4", "8", "12", "15.999"];
const SOURCE = "invented for the demo";

/**
 * The rate cards of the demo, all invented. Its parcels pay by the first: a first price and one for each pound begun, by
 * zone. It ends with the year; the one that follows is dearer and counts size. Letters go up to 15.999 oz.
 *
 * @param validFrom the first day of the demo
 * @param today the last day of the demo
 * @returns the cards as they are kept, the main service first
 */
export function demoRateCards(validFrom: Day, today: Day): KeptRateCard[] {
  const lastDay = day(`${today.slice(0, 4)}-12-31`);
  const parcels = {
    ...plainCard("Parcels", validFrom, [poundBand({ start: 0, pound: 0 })]),
    validTo: lastDay,
  };
  const nextYear = { ...plainCard("Parcels", addDays(lastDay, 1), [poundBand(RISE)]), ...SIZE_TERMS };
  const letters = plainCard("Letter box", validFrom, [letterBand()]);
  return [
    { id: "demo-parcels", card: parcels, source: SOURCE, readOn: validFrom },
    { id: "demo-parcels-next", card: nextYear, source: SOURCE, readOn: today },
    { id: "demo-letters", card: letters, source: SOURCE, readOn: validFrom },
  ];
}

function plainCard(service: string, validFrom: Day, bands: readonly RateBand[]): RateCard {
  return {
    service,
    currency: DEMO_SHOP.currency,
    validFrom,
    validTo: null,
    zones: DEMO_ZONES.map((zone) => zone.id),
    bands,
    roundUpTo: null,
    dimensional: null,
    fees: [],
  };
}

function poundBand(rise: { readonly start: number; readonly pound: number }): RateBand {
  const steps = Array.from({ length: MOST_POUNDS }, (_, at) => ({
    upTo: typed(String(at + 1), "lb"),
    prices: DEMO_ZONES.map(({ startMinor, poundMinor }) =>
      minorUnits(startMinor + rise.start + (at + 1) * (poundMinor + rise.pound)),
    ),
  }));
  return { name: "", walls: NO_WALLS, countsSize: true, steps, beyond: { kind: "notCarried" } };
}

/** What goes through a letter box; abroad it may weigh half a pound. */
function letterBand(): RateBand {
  const steps = LETTER_STEPS.map((text, at) => ({
    upTo: typed(text, "oz"),
    prices: [
      minorUnits(310 + at * 45),
      minorUnits(310 + at * 45),
      at < 2 ? minorUnits(990 + at * 260) : null,
    ],
  }));
  const sides = [typed("14", "in"), typed("10", "in"), typed("1", "in")] as const;
  return { name: "", walls: { ...NO_WALLS, sides }, countsSize: true, steps, beyond: { kind: "notCarried" } };
}

/** How the card of next year counts size: a rule as carriers have it, with invented figures. */
const SIZE_TERMS: Pick<RateCard, "dimensional" | "fees"> = {
  dimensional: {
    divisor: ratio(150n),
    lengthUnit: "in",
    massUnit: "lb",
    floor: ratio(1728n),
    sides: { kind: "up", to: ratio(1n) },
    result: { kind: "up", to: ratio(1n) },
    shapeFactor: null,
    atMost: null,
    zones: null,
  },
  fees: [
    {
      name: "Long parcel",
      validFrom: null,
      validTo: null,
      when: { kind: "side", which: "longest", over: typed("24", "in"), upTo: null },
      groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(450) }] }],
    },
  ],
};

function typed<Unit extends MassUnit | LengthUnit>(number: string, unit: Unit): TypedMeasure<Unit> {
  const measure = typedMeasure(number, unit, DEMO_SHOP.measures);
  if (measure === null) throw new RangeError(`the demo's rate cards require numbers, got ${number}`);
  return measure;
}
