import type { Day } from "#lib/units/day";

/** A price as it was paid: without delivery, so that it can be held against an offer. */
export type PricePaid = {
  readonly on: Day;
  readonly supplierId: string | null;
  /** 1/10,000 minor unit of the shop's currency per use unit */
  readonly perUnit: number;
};

/** How the price of a supply moved; ratios are new over old, 1.05 is a rise of 5 %. */
export type PriceMove = {
  readonly last: PricePaid;
  /** the latest price paid on a day before the last one; null where there is none */
  readonly before: PricePaid | null;
  readonly ratioToBefore: number | null;
  /** the price now on offer over the last one paid; null where no price is on offer */
  readonly ratioToOffer: number | null;
};

/** Beyond this many times the last price, or under its reciprocal, a price is taken for a slip; common practice, no source. */
export const FAR_OFF = 20;

/**
 * Price move of one supply: the last price paid against the one paid before, and the price on offer against the last.
 *
 * @param paid prices paid, oldest first
 * @param offerPerUnit price on offer now, 1/10,000 minor unit per use unit; null where none is known
 * @returns the move, or null where nothing was paid yet
 * @throws RangeError when the prices do not stand oldest first
 * @example priceMove([{ on: day("2026-01-05"), supplierId: null, perUnit: 100 },
 *   { on: day("2026-03-02"), supplierId: null, perUnit: 110 }], null)?.ratioToBefore // 1.1
 */
export function priceMove(paid: readonly PricePaid[], offerPerUnit: number | null): PriceMove | null {
  for (const [index, price] of paid.entries()) {
    const earlier = paid[index - 1];
    if (earlier !== undefined && earlier.on > price.on) {
      throw new RangeError(`priceMove requires prices oldest first, got ${earlier.on} before ${price.on}`);
    }
  }
  const last = paid.at(-1);
  if (last === undefined) return null;
  const before = paid.findLast((price) => price.on < last.on) ?? null;
  return {
    last,
    before,
    ratioToBefore: before === null ? null : ratio(last.perUnit, before.perUnit),
    ratioToOffer: offerPerUnit === null ? null : ratio(offerPerUnit, last.perUnit),
  };
}

/**
 * Whether a price is so far from another that it may be a slip of the finger.
 *
 * @param perUnit price per use unit
 * @param known a price per use unit that is known to be right, in the same money
 * @returns true where one is more than `FAR_OFF` times the other; false where the known price is nothing
 * @example isFarOff(2650, 26.5) // true
 */
export function isFarOff(perUnit: number, known: number): boolean {
  if (known <= 0) return false;
  return perUnit > known * FAR_OFF || perUnit * FAR_OFF < known;
}

function ratio(now: number, then: number): number | null {
  return then > 0 ? now / then : null;
}
