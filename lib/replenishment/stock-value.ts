/** Unit cost as an exact ratio: 1/10,000 minor units per 1/12,000 use units. Amount 0: no cost is known. */
export type UnitCost = { readonly value: bigint; readonly amount: bigint };

/**
 * Value of an amount at a unit cost, rounded half to even so that many lines do not drift one way.
 * Formula: amount × cost.value / cost.amount.
 *
 * @param amount signed, 1/12,000 use unit
 * @param cost moving average cost of the supply
 * @returns value in 1/10,000 minor unit, signed as the amount; null where no cost is known
 * @throws RangeError when the cost's amount is negative
 * @example stockValue(6000n, { value: 15n, amount: 12_000n }) // 8n (7.5 goes to the even 8)
 */
export function stockValue(amount: bigint, cost: UnitCost): bigint | null {
  if (cost.amount < 0n)
    throw new RangeError(`stockValue requires a cost amount of 0 or more, got ${cost.amount}`);
  if (cost.amount === 0n) return null;
  const product = amount * cost.value;
  const quotient = product / cost.amount;
  const twiceRest = 2n * (product - quotient * cost.amount);
  const step = product < 0n ? -1n : 1n;
  const size = twiceRest < 0n ? -twiceRest : twiceRest;
  if (size > cost.amount) return quotient + step;
  if (size === cost.amount && quotient % 2n !== 0n) return quotient + step;
  return quotient;
}

/** What a receipt does to the cost of a supply. */
export type ReceivedCost = {
  readonly cost: UnitCost;
  /** Value to book as a line of its own: stock used or held before its price was known. */
  readonly difference: bigint;
};

/**
 * Moving weighted average cost after a paid receipt. Where stock was at or below zero, or no cost was
 * known, what was used or held so far is put right to the new price by a difference line.
 *
 * @param before on hand and its value before the receipt, and the cost known then
 * @param amount received, above 0
 * @param landed value of the receipt with delivery and tax
 * @returns the new unit cost and the difference to book
 * @throws RangeError when nothing is received
 * @example receivedCost({ amount: 10n, value: 100n, cost: { value: 10n, amount: 1n } }, 10n, 200n)
 * // { cost: { value: 300n, amount: 20n }, difference: 0n }
 */
export function receivedCost(
  before: { readonly amount: bigint; readonly value: bigint; readonly cost: UnitCost },
  amount: bigint,
  landed: bigint,
): ReceivedCost {
  if (amount <= 0n) throw new RangeError(`receivedCost requires an amount above 0, got ${amount}`);
  if (before.amount > 0n && before.cost.amount > 0n && before.value >= 0n) {
    return { cost: { value: before.value + landed, amount: before.amount + amount }, difference: 0n };
  }
  const cost = { value: landed, amount };
  const wanted = stockValue(before.amount + amount, cost) ?? 0n;
  return { cost, difference: wanted - before.value - landed };
}
