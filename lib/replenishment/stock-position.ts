import type { Arrival } from "#lib/replenishment/run-out";
import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

/**
 * Position: what is on hand and what is on order and comes by a day. An order is due when the position
 * is at or under the reorder point.
 *
 * @param onHand null when never counted
 * @param onOrder what is on order, in any order; what is late counts
 * @param until last day that an arrival counts
 * @returns the position, null when the stock is not known
 * @example stockPosition(amountOfUnits(174), [{ amount: amountOfUnits(500), expectedOn: day("2026-12-01") }],
 *   day("2026-12-11")) // 674 units
 */
export function stockPosition(onHand: Amount | null, onOrder: readonly Arrival[], until: Day): Amount | null {
  if (onHand === null) {
    return null;
  }
  return amount(
    onOrder.reduce(
      (sum, arrival) => (arrival.expectedOn <= until ? sum + arrival.amount : sum),
      onHand as number,
    ),
  );
}
