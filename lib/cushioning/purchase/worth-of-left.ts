import type { MixSupply } from "#lib/cushioning/purchase/mix-question";

/**
 * What is left of a supply is worth: its worth for a unit, up to as many as count.
 *
 * @param supply what a unit is worth, and how many count
 * @param left use units; below 0 is worth nothing
 * @returns minor units, fractional
 * @example worthOfLeft({ leftMinor: 7, worthUpTo: 100 }, 130) // 700
 */
export function worthOfLeft(
  { leftMinor, worthUpTo }: Pick<MixSupply, "leftMinor" | "worthUpTo">,
  left: number,
): number {
  return leftMinor * Math.min(Math.max(0, left), worthUpTo);
}
