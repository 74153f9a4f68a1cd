import { type PriceMove, priceMove } from "#lib/purchasing/price-move";
import { addDays, type Day } from "#lib/units/day";
import type { SupplyPricePaid } from "#prisma/records/prices-paid";

/** A supply whose price moved when it was last paid. */
export type PriceRow = { readonly supplyId: string; readonly move: PriceMove };

/** A smaller change is no news, an older one is known; guesses, no source. */
const LEAST_CHANGE = 0.03;
const LAST_DAYS = 42;

/**
 * Prices that moved lately: paid in the last six weeks, at least 3 % off the price before.
 *
 * @param paid prices paid, oldest first
 * @param today the day of the check
 * @returns supplies with their move, the largest first
 */
export function priceRows(paid: readonly SupplyPricePaid[], today: Day): PriceRow[] {
  const until = paid.filter(({ on }) => on <= today);
  const change = ({ move }: PriceRow) => Math.abs((move.ratioToBefore ?? 1) - 1);
  return [...new Set(until.map(({ supplyId }) => supplyId))]
    .flatMap((supplyId): PriceRow[] => {
      const move = priceMove(
        until.filter((price) => price.supplyId === supplyId),
        null,
      );
      return move === null || move.last.on < addDays(today, -LAST_DAYS) ? [] : [{ supplyId, move }];
    })
    .filter((row) => change(row) >= LEAST_CHANGE)
    .toSorted((a, b) => change(b) - change(a));
}
