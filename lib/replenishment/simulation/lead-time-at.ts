import type { LeadTimes, ShopSupplier } from "#lib/replenishment/simulation/shop-setting";

const ROUNDING = 1e-9;
const AS_A_RULE = 0.5;

/**
 * Lead times of an order that is placed on a day.
 *
 * @param supplier with its lead times
 * @param day counted from 0
 * @returns days with their chances, the shorter first
 * @throws RangeError when days are not whole from 0, or the chances not from 0 or do not add up to 1
 * @example leadTimesOn(supplier, 0) // [{ days: 3, chance: 0.8 }, { days: 9, chance: 0.2 }]
 */
export function leadTimesOn({ supplierId, leadTimes }: ShopSupplier, day: number): LeadTimes {
  const found = typeof leadTimes === "function" ? leadTimes(day) : leadTimes;
  const sum = found.reduce((total, { chance }) => total + chance, 0);
  const isFine = found.every(({ days, chance }) => Number.isSafeInteger(days) && days >= 0 && chance >= 0);
  if (!isFine || !(Math.abs(sum - 1) < ROUNDING)) {
    throw new RangeError(
      `leadTimesOn requires whole days from 0 of ${supplierId} with chances that add up to 1, got ${sum}`,
    );
  }
  return found.toSorted((a, b) => a.days - b.days);
}

/**
 * The lead time at a chance.
 *
 * @param leadTimes days with their chances, the shorter first
 * @param chance from 0 up to 1
 * @returns whole days
 * @throws RangeError when there is none
 * @example leadTimeAt([{ days: 3, chance: 0.8 }, { days: 9, chance: 0.2 }], 0.85) // 9
 */
export function leadTimeAt(leadTimes: LeadTimes, chance: number): number {
  let reached = 0;
  for (const { days, chance: share } of leadTimes) {
    reached += share;
    if (chance < reached) return days;
  }
  const longest = leadTimes.at(-1);
  if (longest === undefined) throw new RangeError("leadTimeAt requires a lead time, got none");
  return longest.days;
}

/**
 * The lead time that a shop reckons with: the first day by which an order has come with a chance of a half.
 *
 * @param leadTimes days with their chances, the shorter first
 * @throws RangeError when there is none
 * @example usualLeadTime([{ days: 3, chance: 0.8 }, { days: 9, chance: 0.2 }]) // 3
 */
export function usualLeadTime(leadTimes: LeadTimes): number {
  return leadTimeAt(leadTimes, AS_A_RULE - ROUNDING);
}
