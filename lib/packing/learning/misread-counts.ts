import { type CountEquations, errorCovariance } from "#lib/packing/learning/count-equations";
import { cholesky, choleskySolve } from "#lib/statistics/cholesky";
import {
  tridiagonalFactor,
  tridiagonalInverse,
  tridiagonalSolve,
  tridiagonalWhite,
} from "#lib/statistics/tridiagonal";

/** Errors of counts and uses follow a t distribution with so few degrees of freedom: now and then one is far off. */
const DEGREES = 4;
const ROUNDS = 6;
/** Deviation of a factor before anything is known, wide enough for any card. */
const WIDE = 0.5;

/**
 * The same equations with wider variances where a count or an interval lies far off what the others say: a misread pile, a
 * bundle that got wet and was never booked.
 *
 * @param equations of `countEquations`
 * @returns equations with variances divided by the weights of the t distribution
 * @see Lange, Little and Taylor (1989), Robust statistical modeling using the t distribution, JASA 84 (from memory)
 * @example misreadCounts(equations).countVariances // the misread count's is many times wider
 */
export function misreadCounts(equations: CountEquations): CountEquations {
  let here = equations;
  for (let round = 0; round < ROUNDS; round += 1) {
    const factor = tridiagonalFactor(errorCovariance(here, 1, 1));
    const rest = restOf(here, factor);
    const pulls = tridiagonalSolve(factor, rest);
    const inverse = tridiagonalInverse(factor);
    // The error of a count enters the interval that it closes with a minus and the one that it opens with a plus.
    const countScores = here.countVariances.map(() => ({ pull: 0, strength: 0 }));
    for (const [at, { opening, closing }] of here.counts.entries()) {
      const [open, close] = [countScores[opening], countScores[closing]];
      if (open === undefined || close === undefined) continue;
      open.pull += pulls[at] ?? 0;
      open.strength += inverse.diagonal[at] ?? 0;
      close.pull -= pulls[at] ?? 0;
      close.strength += inverse.diagonal[at] ?? 0;
      if (here.counts[at + 1]?.opening === closing) close.strength -= 2 * (inverse.beside[at] ?? 0);
    }
    here = {
      ...equations,
      useVariances: equations.useVariances.map((first, at) =>
        likelyVariance(first, here.useVariances[at] ?? first, {
          pull: pulls[at] ?? 0,
          strength: inverse.diagonal[at] ?? 0,
        }),
      ),
      countVariances: equations.countVariances.map((first, at) =>
        likelyVariance(first, here.countVariances[at] ?? first, countScores[at] ?? { pull: 0, strength: 0 }),
      ),
    };
  }
  return here;
}

/** What is left of the equations after factors with a wide prior. */
function restOf({ beyond, byCards }: CountEquations, factor: ReturnType<typeof tridiagonalFactor>): number[] {
  const columns = (byCards[0] ?? []).map((_, column) =>
    tridiagonalWhite(
      factor,
      byCards.map((row) => row[column] ?? 0),
    ),
  );
  const white = tridiagonalWhite(factor, beyond);
  const dot = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0);
  const matrix = columns.map((left, row) =>
    columns.map((right, column) => dot(left, right) + (row === column ? 1 / WIDE ** 2 : 0)),
  );
  const factors = choleskySolve(
    cholesky(matrix),
    columns.map((column) => dot(column, white)),
  );
  return beyond.map((value, at) => value - dot(byCards[at] ?? [], factors));
}

/**
 * First variance over the weight of the t distribution. Under the variance of now the error has mean variance · pull and
 * variance variance - variance² · strength.
 */
function likelyVariance(
  first: number,
  now: number,
  { pull, strength }: { readonly pull: number; readonly strength: number },
): number {
  const square = (now * pull) ** 2 + now - now * now * strength;
  return (first * (DEGREES + square / first)) / (DEGREES + 1);
}
