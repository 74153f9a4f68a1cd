import type { WayToPack } from "#lib/cushioning/way-to-pack";
import { weightSpreadOf } from "#lib/cushioning/weight-spread-of";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { type ExpectedPostage, expectedPostage, type ZoneShare } from "#lib/postage/expected-postage";
import type { RateCard } from "#lib/postage/rate-card";
import type { Day } from "#lib/units/day";

/** Prices by supply, 1/10,000 minor unit a use unit; null or absent where none is known. */
export type UnitPrices = ReadonlyMap<string, number | null>;

/** What a way to pack is reckoned with; money in minor units. */
export type WayTerms = {
  /** what a supply costs in the books */
  readonly book: UnitPrices;
  /** what buying it again costs: by this the ways are compared */
  readonly replacement: UnitPrices;
  /** null where no card holds */
  readonly card: RateCard | null;
  readonly zones: readonly ZoneShare[];
  readonly shipDay: Day;
  /** an hour of the packer's time; null: it is not counted */
  readonly hourMinor: number | null;
  /** minutes that packing takes in a style; null: not said */
  readonly minutes: Readonly<Record<CushionStyle, number | null>>;
  /** parcels of 1,000 that arrive broken in a style; null: not said */
  readonly brokenPerMille: Readonly<Record<CushionStyle, number | null>>;
  /** litres that a use unit takes on the shelf; absent where that is not known */
  readonly litres: ReadonlyMap<string, number>;
  /** whether a supply is paper or board, which most buyers can recycle at home */
  readonly isPaper: (supplyId: string) => boolean;
  readonly supplyMasses: ReadonlyMap<string, number | null>;
};

/** What a parcel costs when it is packed in one way; money in minor units, not rounded. */
export type WayCost = {
  readonly way: WayToPack;
  readonly bookMinor: number;
  readonly materialsMinor: number;
  /** null without a card, zones or a weight */
  readonly postage: (ExpectedPostage & { readonly kind: "expected" }) | null;
  readonly postageMinor: number | null;
  /** null where time is not counted */
  readonly minutesMinor: number | null;
  /** rate times the value and both postages; null where no rate or no value is said */
  readonly breakageMinor: number | null;
  /** how often its postage is in the total: once, and again for what breaks */
  readonly postagesPaid: number;
  /** all that is known, added up */
  readonly totalMinor: number;
  /** room on the shelf of what it takes, litres, as far as it is written down; null where none of it is */
  readonly litres: number | null;
  /** share of the packing's weight that is paper or board; null where nothing is weighed */
  readonly paperShare: number | null;
  /** supplies whose replacement price is not known and that count as nothing */
  readonly unpriced: readonly string[];
};

const VALUE_PER_MINOR = 10_000;
const MINUTES_AN_HOUR = 60;
const PER_MILLE = 1_000;
/** What broke was sent once, and its replacement goes again. */
const POSTAGES_OF_A_BREAKAGE = 2;

/**
 * What a parcel costs in one way to pack it: materials bought again, postage expected over what it may weigh and where it
 * goes, the packer's time and the risk of breakage where the seller counts them.
 *
 * @param way what the style takes
 * @param terms prices, rate card, zones, time and risk
 * @param valueMinor what is in the parcel sells for; null where that is not said
 * @returns each part, and their sum
 * @see breakage: rate times the value and both postages, common practice, no source
 */
export function wayCost(way: WayToPack, terms: WayTerms, valueMinor: number | null): WayCost {
  const materials = materialsOf(way, terms.replacement);
  const postage = postageOf(way, terms);
  const postageMinor = postage?.minor ?? null;
  const minutes = terms.minutes[way.style];
  const rate = terms.brokenPerMille[way.style];
  const minutesMinor =
    terms.hourMinor === null || minutes === null ? null : (minutes / MINUTES_AN_HOUR) * terms.hourMinor;
  const brokenShare = rate === null || valueMinor === null ? 0 : rate / PER_MILLE;
  const breakageMinor =
    rate === null || valueMinor === null
      ? null
      : brokenShare * (valueMinor + POSTAGES_OF_A_BREAKAGE * (postageMinor ?? 0));
  return {
    way,
    bookMinor: materialsOf(way, terms.book).minor,
    materialsMinor: materials.minor,
    postage,
    postageMinor,
    minutesMinor,
    breakageMinor,
    postagesPaid: 1 + POSTAGES_OF_A_BREAKAGE * brokenShare,
    totalMinor: materials.minor + (postageMinor ?? 0) + (minutesMinor ?? 0) + (breakageMinor ?? 0),
    litres: litresOf(way, terms.litres),
    paperShare: paperShareOf(way, terms),
    unpriced: materials.unpriced,
  };
}

function materialsOf({ takes }: WayToPack, prices: UnitPrices) {
  let value = 0;
  const unpriced: string[] = [];
  for (const [supplyId, units] of takes) {
    const price = prices.get(supplyId) ?? null;
    if (price === null) unpriced.push(supplyId);
    else value += price * units;
  }
  return { minor: value / VALUE_PER_MINOR, unpriced };
}

function postageOf({ weight, size }: WayToPack, { card, zones, shipDay }: WayTerms): WayCost["postage"] {
  if (weight === null || card === null || zones.length === 0) return null;
  const expected = expectedPostage({ card, zones, size, shipDay, spread: weightSpreadOf(weight) });
  return expected.kind === "expected" ? expected : null;
}

function litresOf({ takes }: WayToPack, litres: WayTerms["litres"]): number | null {
  const known = [...takes].filter(([supplyId]) => litres.has(supplyId));
  if (known.length === 0) return null;
  return known.reduce((sum, [supplyId, units]) => sum + units * (litres.get(supplyId) ?? 0), 0);
}

function paperShareOf({ takes }: WayToPack, { isPaper, supplyMasses }: WayTerms): number | null {
  let all = 0;
  let paper = 0;
  for (const [supplyId, units] of takes) {
    const mg = (supplyMasses.get(supplyId) ?? 0) * units;
    all += mg;
    if (isPaper(supplyId)) paper += mg;
  }
  return all > 0 ? paper / all : null;
}
