/** What stock is to do: last through a share of the order cycles, or fill a share of the need. */
export type ServiceGoal = {
  readonly kind: "cycles" | "share";
  /** between 0 and 1 */
  readonly level: number;
};

/**
 * A goal as sellers say it: the least number of order cycles of which at most one ends with nothing left.
 *
 * @param level wanted share of cycles without a shortage, between 0 and 1
 * @returns cycles, a whole number from 1
 * @example cyclesPerShortage(0.95) // 20
 */
export function cyclesPerShortage(level: number): number {
  return Math.max(1, Math.round(1 / (1 - level)));
}
