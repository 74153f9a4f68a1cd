import { patternOfUse } from "#lib/forecast/pattern-of-use";
import { comingPath, STEPS } from "#lib/forecast/shop/coming-path";
import { type FirstWeeks, firstWeeksDispersions, weekDispersion } from "#lib/forecast/shop/first-weeks";
import { usedOverCard } from "#lib/forecast/shop/recipe-route";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";
import type { ShopHistory, SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";
import { cardUse, supplySeries } from "#lib/forecast/shop/supply-series";

/** Name of the way of the first weeks. */
export const FIRST_WEEKS_METHOD = "first weeks";

/** All item types together are believed to share one piece that nobody has sold yet. A guess, no source. */
const PIECES_OF_BELIEF = 1;

/** A belief never rests on less than Jeffreys' half event. */
const LEAST_EVENTS = 0.5;

/** What the outlooks of a shop's first weeks have in common. */
export type FirstWeeksGround = {
  readonly ground: ShopGround;
  readonly history: ShopHistory;
  readonly belief: FirstWeeks;
};

/** Parcels of the shop in its first weeks. */
export function firstParcels(first: FirstWeeksGround): SubjectOutlook {
  const { ground, belief } = first;
  const { parcels } = belief;
  const values = ground.weeks.map((_, place) =>
    ground.types.reduce((sum, type) => sum + (type.parcels[place] ?? 0), 0),
  );
  return outlook(first, {
    rate: parcels.events / parcels.weeks,
    events: parcels.events,
    perUse: 1,
    whole: true,
    values,
    factors: mixedFactors(ground, pieceRates(first)),
  });
}

/** Pieces of each item type in the first weeks, in the ground's order: parcels, times pieces a parcel, times its share. */
export function firstPieces(first: FirstWeeksGround): SubjectOutlook[] {
  const { ground, belief } = first;
  const rates = pieceRates(first);
  const total = rates.reduce((sum, rate) => sum + rate, 0);
  return ground.types.map((type, index) => {
    const rate = rates[index] ?? 0;
    const events = total > 0 ? (belief.parcels.events * rate) / total : 0;
    return outlook(first, {
      rate,
      events,
      perUse: type.piecesAtOnce,
      whole: true,
      values: type.pieces,
      factors: type.comingFactors,
    });
  });
}

/** Use of a supply in the first weeks; null where no recipe takes it and none was used. */
export function firstUse(supply: SupplyUseHistory, first: FirstWeeksGround): SubjectOutlook | null {
  const { ground, history, belief } = first;
  const series = supplySeries(supply, ground);
  const rates = pieceRates(first);
  const total = rates.reduce((sum, rate) => sum + rate, 0);
  const byCard = series.bill.reduce((sum, amount, type) => sum + amount * (rates[type] ?? 0), 0);
  const taking = rates.reduce((sum, rate, type) => sum + ((series.bill[type] ?? 0) > 0 ? rate : 0), 0);
  const { perUse } = series;
  const frame = { perUse, whole: supply.whole, values: series.values, factors: series.comingFactors };
  if (byCard > 0) {
    const card = cardUse(series.bill, ground).slice(series.start);
    const rate = byCard * usedOverCard(series.values, card);
    return outlook(first, { ...frame, rate, events: (belief.parcels.events * taking) / total });
  }
  const weeks = ground.weeks.length > 0 ? series.values.length : history.firstDays / 7;
  const used =
    ground.weeks.length > 0 ? series.values.reduce((sum, each) => sum + each, 0) : supply.firstDaysUsed;
  if (used <= 0 || weeks <= 0) return null;
  return outlook(first, { ...frame, rate: used / weeks, events: Math.max(1, used / perUse) });
}

/** Events of each coming week for the shop as a whole: those of its item types, in proportion to their pieces. */
function mixedFactors({ types, coming }: ShopGround, rates: readonly number[]): number[] {
  const total = rates.reduce((sum, rate) => sum + rate, 0);
  if (total <= 0) return coming.map(() => 1);
  return coming.map((_, week) =>
    types.reduce(
      (sum, type, index) => sum + ((rates[index] ?? 0) / total) * (type.comingFactors[week] ?? 1),
      0,
    ),
  );
}

/** Expected pieces a week of each item type. */
function pieceRates({ ground, history, belief }: FirstWeeksGround): number[] {
  const isInDays = ground.weeks.length === 0;
  const pieces = ground.types.map((type, index) =>
    isInDays
      ? (history.itemTypes[index]?.firstDays.pieces ?? 0)
      : type.pieces.reduce((sum, each) => sum + each, 0),
  );
  const parcels = ground.types.reduce(
    (sum, type, index) =>
      sum +
      (isInDays
        ? (history.itemTypes[index]?.firstDays.parcels ?? 0)
        : type.parcels.reduce((all, each) => all + each, 0)),
    0,
  );
  const total = pieces.reduce((sum, each) => sum + each, 0);
  const perParcel = parcels > 0 ? total / parcels : 1;
  const perWeek = (belief.parcels.events / belief.parcels.weeks) * perParcel;
  const believed = PIECES_OF_BELIEF / Math.max(1, ground.types.length);
  return pieces.map((each) => (perWeek * (each + believed)) / (total + PIECES_OF_BELIEF));
}

type Rate = {
  readonly rate: number;
  readonly events: number;
  readonly perUse: number;
  readonly whole: boolean;
  readonly values: readonly number[];
  /** season and events of each coming week */
  readonly factors: readonly number[];
};

function outlook(
  { ground, belief }: Pick<FirstWeeksGround, "ground" | "belief">,
  { rate, events, perUse, whole, values, factors }: Rate,
): SubjectOutlook {
  const unsure = {
    events: Math.max(events, LEAST_EVENTS),
    weeks: belief.parcels.weeks,
    week: weekDispersion(values, perUse),
  };
  const flat = { forecast: (steps: number) => new Array<number>(steps).fill(rate) };
  return {
    coming: {
      path: comingPath(flat, { coming: ground.coming, factors }),
      spread: { perUse, whole, dispersions: firstWeeksDispersions(unsure, STEPS) },
      method: FIRST_WEEKS_METHOD,
      weeksSeen: belief.weeksSeen,
      guessedShare: belief.guessedShare,
      likeId: null,
    },
    past: { horizonWeeks: 1, tried: [], said: [], pattern: patternOfUse(values) },
  };
}
