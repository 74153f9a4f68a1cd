import type { MixturePart } from "#lib/statistics/mixture";

/** How many parcels the t distribution counts for beside the errors that were seen. */
const FORMULA_COUNTS = 20;
/** Errors are summed up by so many of their quantiles. */
const POINTS = 40;
/** Width of the bell around each point, in scales. */
const SMOOTHING = 0.35;

/**
 * The shape of a shop's errors, in scales: at first a t distribution, then more and more what was seen, smoothed. Packing
 * errs more to the heavy side (an extra wrap is soon added), which no symmetric formula shows.
 *
 * @param errors in scales, each with what it counts
 * @param degrees of freedom of the t distribution
 * @returns parts of a mixture that add up to 1
 * @see Silverman (1986), Density Estimation, 6.4: the smoothed bootstrap, drawn in to keep the variance (from memory)
 * @example errorShape([], 4) // [{ weight: 1, centre: 0, scale: 1, degrees: 4 }]
 */
export function errorShape(
  errors: readonly { readonly error: number; readonly weight: number }[],
  degrees: number,
): readonly MixturePart[] {
  const counted = errors.filter(({ weight }) => weight > 0).sort((a, b) => a.error - b.error);
  const seen = counted.reduce((sum, { weight }) => sum + weight, 0);
  const formula = FORMULA_COUNTS / (FORMULA_COUNTS + seen);
  const bell = { weight: formula, centre: 0, scale: 1, degrees };
  if (seen === 0) return [bell];
  const mean = counted.reduce((sum, { error, weight }) => sum + error * weight, 0) / seen;
  const variance = counted.reduce((sum, { error, weight }) => sum + weight * (error - mean) ** 2, 0) / seen;
  const drawnIn = 1 / Math.sqrt(1 + SMOOTHING ** 2 / Math.max(variance, SMOOTHING ** 2));
  const points = pointsOf(counted, seen);
  return [
    bell,
    ...points.map((point) => ({
      weight: (1 - formula) / points.length,
      centre: mean + (point - mean) * drawnIn,
      scale: SMOOTHING,
      degrees: null,
    })),
  ];
}

/** The middles of equal shares of the errors. */
function pointsOf(
  sorted: readonly { readonly error: number; readonly weight: number }[],
  seen: number,
): number[] {
  const points: number[] = [];
  let reached = 0;
  for (const { error, weight } of sorted) {
    reached += weight;
    while (points.length < POINTS && (points.length + 0.5) / POINTS <= reached / seen + 1e-12)
      points.push(error);
  }
  return points;
}
