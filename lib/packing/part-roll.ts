import { type Amount, amount } from "#lib/units/amount";

/**
 * What is left on a part roll, from its outer diameter. The wound ring's area goes with the length, whatever the
 * thickness of a layer: left = full amount x (outer² - core²) / (full² - core²).
 *
 * @param roll - outer, core and full diameters in micrometres, and the amount on a full roll
 * @returns the amount left, to the nearest 1/12,000 use unit
 * @throws RangeError unless 0 <= core <= outer <= full, and core < full
 * @see the length of a wound strip, π/4 (outer² - core²) / thickness, divided by the same for the full roll:
 *   mathforum.org, library, drmath 67031 (2003); the check values are computed from the formula
 * @example amountLeftOnRoll({ outerUm: 304800, coreUm: 76200, fullUm: 469900, fullAmount: amountOfUnits(175) })
 *   // 70.9 ft of small bubble at 12 in across
 */
export function amountLeftOnRoll(roll: {
  readonly outerUm: number;
  readonly coreUm: number;
  readonly fullUm: number;
  readonly fullAmount: Amount;
}): Amount {
  const { outerUm, coreUm, fullUm, fullAmount } = roll;
  if (!(coreUm >= 0 && coreUm <= outerUm && outerUm <= fullUm && coreUm < fullUm)) {
    throw new RangeError(
      `amountLeftOnRoll requires 0 <= core <= outer <= full and core < full, got ${coreUm}, ${outerUm}, ${fullUm}`,
    );
  }
  return amount(Math.round(fullAmount * (ring(outerUm, coreUm) / ring(fullUm, coreUm))));
}

function ring(outer: number, inner: number): number {
  return (outer - inner) * (outer + inner);
}
