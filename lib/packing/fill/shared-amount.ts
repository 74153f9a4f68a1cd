import { type Amount, amount } from "#lib/units/amount";

/**
 * An amount shared out by weights in whole steps: each share is what is due up to it, to the nearest step, less what
 * went before, so that the shares add up to the whole.
 *
 * @param whole - a whole number of steps
 * @param weights - weights from zero, of which one is above zero
 * @param step - amount of one step, above zero
 * @returns shares in the order of the weights
 * @throws RangeError if the amount is no whole number of steps or the weights are not as said
 * @example sharedAmount(amountOfUnits(7.5), [1, 2, 1], amountOfUnits(0.5)) // 2, 3½ and 2
 */
export function sharedAmount(whole: Amount, weights: readonly number[], step: Amount): readonly Amount[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  if (!(whole >= 0 && step > 0 && whole % step === 0)) {
    throw new RangeError(`sharedAmount requires a whole number of steps, got ${whole} of ${step}`);
  }
  if (!(sum > 0 && weights.every((weight) => weight >= 0))) {
    throw new RangeError(
      `sharedAmount requires weights from zero with a sum above it, got ${weights.join(", ")}`,
    );
  }
  const steps = whole / step;
  const due = weights.map((_, index) => {
    const upTo = weights.slice(0, index + 1).reduce((total, weight) => total + weight, 0);
    return Math.round((steps * upTo) / sum);
  });
  return due.map((upTo, index) => amount((upTo - (due[index - 1] ?? 0)) * step));
}
