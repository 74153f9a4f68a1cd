import type { PriceSteps } from "#lib/replenishment/order-quantity/price-steps";

/**
 * Price steps of an offer, counted in packs, from its price and its breaks as they are entered.
 *
 * @param offer the price of a pack from the first on, breaks in any order and their kind, all-units where none is said;
 * minor units
 * @returns steps from 0 packs, rising
 * @throws RangeError when two breaks begin at the same number of packs
 * @example packPriceSteps({ priceMinor: 500, breaks: [{ fromPacks: 4, priceMinor: 450 }] }).steps.length // 2
 */
export function packPriceSteps(offer: {
  readonly priceMinor: number;
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
  readonly breakKind?: PriceSteps["pricing"];
}): PriceSteps {
  const pricing = offer.breakKind ?? "all-units";
  // Packs that are paid one by one have a break's price from the pack itself on: it begins after the pack before.
  const shift = pricing === "incremental" ? 1 : 0;
  const rising = offer.breaks.toSorted((a, b) => a.fromPacks - b.fromPacks);
  rising.forEach(({ fromPacks }, index) => {
    if (fromPacks === rising[index - 1]?.fromPacks) {
      throw new RangeError(`packPriceSteps requires one break from ${fromPacks} packs, got two`);
    }
  });
  const first = rising.findLast(({ fromPacks }) => fromPacks <= 1)?.priceMinor ?? offer.priceMinor;
  const later = rising.filter(({ fromPacks }) => fromPacks > 1);
  return {
    steps: [
      { from: 0, price: first },
      ...later.map(({ fromPacks, priceMinor }) => ({ from: fromPacks - shift, price: priceMinor })),
    ],
    pricing,
  };
}
