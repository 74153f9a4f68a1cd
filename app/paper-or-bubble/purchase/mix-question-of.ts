import type { ParcelKind } from "#lib/cushioning/parcel-kind";
import type {
  MixOffer,
  MixQuestion,
  MixSupplier,
  MixSupply,
  MixType,
  MixWay,
} from "#lib/cushioning/purchase/mix-question";
import type { UnitPrices, WayCost } from "#lib/cushioning/way-cost";
import { unitsOf } from "#lib/units/amount";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import { piecesKey } from "../cushion-answer";

/** What the next purchase is planned from. */
export type PurchaseGround = {
  /** weeks until the next purchase */
  readonly weeks: number;
  /** nothing is bought that would last longer */
  readonly longestCoverWeeks: number;
  /** kinds of parcel to come, with their ways */
  readonly kinds: readonly ParcelKind[];
  /** use units there and on order by supply; a supply that was never counted is not in it */
  readonly onHand: ReadonlyMap<string, number>;
  /** use units to be left at the end, by supply */
  readonly keep: ReadonlyMap<string, number>;
  /** prices that are reckoned with, 1/10,000 minor unit a use unit */
  readonly prices: UnitPrices;
  /** of those, prices that are tried out and move the offers with them */
  readonly tried: ReadonlyMap<string, number>;
  readonly priceNow: UnitPrices;
  readonly litres: ReadonlyMap<string, number>;
  readonly offers: readonly Offer[];
  readonly suppliers: readonly Supplier[];
  /** what a year of keeping stock costs, per thousand of its value */
  readonly holdingPerMille: number;
  readonly cashMinor: number | null;
  readonly litresAtHome: number | null;
};

const VALUE_PER_MINOR = 10_000;
const WEEKS_A_YEAR = 52;
const DAYS_A_MONTH = 30.4;
const DAYS_A_WEEK = 7;
const PER_MILLE = 1_000;

/**
 * The question of the next purchase: which packs, and which parcels in which style. Supplies that were never counted are
 * left out of it, as nothing is known of what is there.
 *
 * @param ground parcels to come, stock, offers, limits
 * @returns the question; its types are named by `piecesKey`
 */
export function mixQuestionOf(ground: PurchaseGround): MixQuestion {
  const taken = new Set(
    ground.kinds.flatMap(({ costs }) => costs.flatMap(({ way }) => [...way.takes.keys()])),
  );
  const supplies = [...taken].flatMap((id): MixSupply[] => {
    const onHand = ground.onHand.get(id);
    if (onHand === undefined) return [];
    return [
      {
        id,
        onHand: Math.max(0, onHand),
        keep: Math.max(0, ground.keep.get(id) ?? 0),
        leftMinor: worthOf(ground.prices.get(id) ?? 0, ground),
        worthUpTo: mostUseLater(id, ground),
        litresPerUnit: ground.litres.get(id) ?? 0,
      },
    ];
  });
  const planned = new Set(supplies.map(({ id }) => id));
  return {
    supplies,
    suppliers: ground.suppliers.map(
      ({ id, deliveryMinor, freeDeliveryMinor, leastOrderMinor }): MixSupplier => ({
        id,
        deliveryMinor,
        freeFromMinor: freeDeliveryMinor,
        leastOrderMinor,
      }),
    ),
    offers: ground.offers
      .filter(({ supplyId }) => planned.has(supplyId))
      .map((offer) => mixOffer(offer, ground)),
    types: ground.kinds.flatMap(({ pieces, parcels, costs }): MixType[] =>
      costs.length === 0 ? [] : [{ id: piecesKey(pieces), parcels, ways: mixWays(costs, planned) }],
    ),
    limits: { cashMinor: ground.cashMinor, litres: ground.litresAtHome },
  };
}

/** Left over, it is worth its price less what keeping it costs: to the next purchase, and on until half of it is used. */
function worthOf(price: number, ground: PurchaseGround): number {
  const keptWeeks = ground.weeks + laterWeeks(ground) / 2;
  const kept = 1 - (ground.holdingPerMille / PER_MILLE) * (keptWeeks / WEEKS_A_YEAR);
  return (price / VALUE_PER_MINOR) * Math.max(0, kept);
}

/** What would still be used within the longest cover, in the style that takes most of it; more is worth nothing. */
function mostUseLater(supplyId: string, ground: PurchaseGround): number {
  const perPeriod = ground.kinds.reduce((sum, { parcels, costs }) => {
    return sum + parcels * Math.max(0, ...costs.map(({ way }) => way.takes.get(supplyId) ?? 0));
  }, 0);
  return perPeriod * (laterWeeks(ground) / ground.weeks);
}

function laterWeeks({ longestCoverWeeks, weeks }: PurchaseGround): number {
  return Math.max(0, longestCoverWeeks - weeks);
}

/** Postage that is known on one side alone says nothing: then it counts on neither. */
function mixWays(costs: readonly WayCost[], planned: ReadonlySet<string>): MixWay[] {
  const isTold = costs.every(({ postageMinor }) => postageMinor !== null);
  return costs.map(({ way, postageMinor, minutesMinor, breakageMinor }) => ({
    style: way.style,
    takes: [...way.takes].flatMap(([supplyId, units]) =>
      planned.has(supplyId) ? [{ supplyId, units }] : [],
    ),
    sendMinor: isTold ? (postageMinor ?? 0) : 0,
    otherMinor: (minutesMinor ?? 0) + (breakageMinor ?? 0),
  }));
}

/**
 * How many times its price the packs of a supply cost while another price is tried out: all alike.
 *
 * @param supplyId of the packs
 * @param prices those tried out and those now
 * @returns 1 where none is tried, or none is known now
 */
export function timesItsPrice(
  supplyId: string,
  { tried, priceNow }: Pick<PurchaseGround, "tried" | "priceNow">,
): number {
  const asked = tried.get(supplyId);
  const now = priceNow.get(supplyId) ?? 0;
  return asked === undefined || !(now > 0) ? 1 : asked / now;
}

function mixOffer(offer: Offer, ground: PurchaseGround): MixOffer {
  const { id, supplyId, supplierId, packAmount, priceMinor, breaks, breakKind } = offer;
  const times = timesItsPrice(supplyId, ground);
  const steps = [{ fromPacks: 1, priceMinor: priceMinor ?? 0 }, ...breaks].map((step) => ({
    ...step,
    priceMinor: Math.round(step.priceMinor * times),
  }));
  return {
    id,
    supplyId,
    supplierId,
    unitsPerPack: unitsOf(packAmount),
    kind: breakKind,
    steps: priceMinor === null ? null : steps,
    mostPacks: mostPacks(offer, ground.weeks),
  };
}

/** What a supplier sells until the next purchase: its monthly limit for each month begun. */
function mostPacks({ soldOut, mostPacksAMonth }: Offer, weeks: number): number | null {
  if (soldOut) return 0;
  return mostPacksAMonth === null
    ? null
    : mostPacksAMonth * Math.max(1, Math.ceil((weeks * DAYS_A_WEEK) / DAYS_A_MONTH));
}
