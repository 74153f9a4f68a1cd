import { packPrice } from "#lib/replenishment/pack-price";
import type { Amount } from "#lib/units/amount";

/** An offer as it stands. */
type OfferNow = {
  readonly packAmount: Amount;
  readonly priceMinor: number | null;
  readonly breakKind: "all-units" | "incremental";
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
};

/** What came of it, in the shop's currency. */
type CameIn = { readonly packs: number; readonly packAmount: Amount; readonly priceMinor: number | null };

/** Where what came differs from the offer; null where it does not. */
export type OfferDifference = {
  readonly price: {
    readonly from: number | null;
    readonly to: number;
    /** the break whose price it is; null where it is the price from the first pack on */
    readonly fromPacks: number | null;
  } | null;
  readonly pack: { readonly from: Amount; readonly to: Amount } | null;
};

/**
 * How what came differs from its offer: in the price of a pack and in what is in one. With incremental breaks that were
 * reached one price of the invoice does not tell which step moved: then the price is left alone.
 *
 * @param offer as it stands
 * @param came packs, the real pack and the price of one, minor units of the shop's currency
 * @param orderedPacks packs of the order: they decide which price break was reached, also where only a part came
 * @returns the difference, or null where there is none
 * @example offerDifference(offer, { packs: 2, packAmount: amountOfUnits(175), priceMinor: 2800 }, 2)
 */
export function offerDifference(offer: OfferNow, came: CameIn, orderedPacks: number): OfferDifference | null {
  const pack = came.packAmount === offer.packAmount ? null : { from: offer.packAmount, to: came.packAmount };
  const price = priceDifference(offer, came.priceMinor, orderedPacks);
  return pack === null && price === null ? null : { pack, price };
}

function priceDifference(offer: OfferNow, paidMinor: number | null, packs: number): OfferDifference["price"] {
  const reached = offer.breaks.filter((step) => step.fromPacks <= packs).map((step) => step.fromPacks);
  const from = packPrice(offer, packs);
  if (paidMinor === null || paidMinor === from) return null;
  if (reached.length > 0 && offer.breakKind === "incremental") return null;
  return { from, to: paidMinor, fromPacks: reached.length === 0 ? null : Math.max(...reached) };
}
