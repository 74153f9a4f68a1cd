/** How a pile was counted. */
export type CountMethod = "number" | "roll" | "height" | "weight" | "looks-right";

/** Share of the pile by which a count is off as a rule: all guesses. */
const SHARE: Readonly<Record<CountMethod, number>> = {
  number: 0.01,
  roll: 0.05,
  height: 0.05,
  weight: 0.03,
  "looks-right": 0.1,
};
/** However small the pile, a count is off by a bit: a begun sheet, the foot on the bench. A guess. */
const LEAST_UNITS = 0.5;

/**
 * How far a count is off as a rule, as a standard deviation: a share of the pile by the way of counting, and at least half
 * a use unit.
 *
 * @param units counted, use units; below zero counts as empty
 * @param method how it was counted
 * @returns use units
 * @see common practice, no source: misreading a roll's diameter by 3 mm shifts its length by some 5 %
 * @example countDeviation(100, "height") // 5.02
 */
export function countDeviation(units: number, method: CountMethod): number {
  return Math.hypot(LEAST_UNITS, SHARE[method] * Math.max(0, units));
}
