const HALVINGS = 80;

/**
 * Student t quantile for whole degrees of freedom: the t below which a share `probability` lies.
 * The chance that |T| stays below t is a finite sum in the angle atan(t / sqrt(degrees)), which is
 * searched by halving.
 *
 * @param probability between 0 and 1, both excluded
 * @param degrees degrees of freedom, a whole number from 1
 * @returns the t of that probability, without unit
 * @throws RangeError when the probability or the degrees are out of range
 * @see Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from
 * memory; the values are checked in the tests)
 * @example studentTQuantile(0.95, 3) // 2.3533634348018
 */
export function studentTQuantile(probability: number, degrees: number): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`studentTQuantile requires a probability between 0 and 1, got ${probability}`);
  }
  if (!Number.isSafeInteger(degrees) || degrees < 1) {
    throw new RangeError(`studentTQuantile requires whole degrees of freedom from 1, got ${degrees}`);
  }
  if (probability < 0.5) {
    return -studentTQuantile(1 - probability, degrees);
  }
  const wanted = 2 * probability - 1;
  let low = 0;
  let high = Math.PI / 2;
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (centralProbability(middle, degrees) < wanted) {
      low = middle;
    } else {
      high = middle;
    }
  }
  return Math.sqrt(degrees) * Math.tan((low + high) / 2);
}

/** The chance that |T| is below sqrt(degrees) * tan(angle). */
function centralProbability(angle: number, degrees: number): number {
  const odd = degrees % 2 === 1;
  const squaredCosine = Math.cos(angle) ** 2;
  let term = odd ? Math.cos(angle) : 1;
  let sum = 0;
  for (let power = odd ? 1 : 0; power <= degrees - 2; power += 2) {
    sum += term;
    term *= ((power + 1) / (power + 2)) * squaredCosine;
  }
  return odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}
