import { smoothingMethod } from "#lib/forecast/methods/smoothing-method";
import type { SmoothingRecipe } from "#lib/forecast/methods/smoothing-recipe";

const ALPHA = { name: "alpha", bounds: [0, 1], starts: [0.02, 0.1, 0.2, 0.4, 0.6, 0.8, 0.95] } as const;

/**
 * Simple exponential smoothing: the level follows the values by a share `alpha` of each error. Starts at the
 * first value.
 *
 * @see Brown (1959); NIST/SEMATECH e-Handbook of Statistical Methods, 6.4.3.1 (from memory)
 * @example simpleSmoothing.fixed({ values: [10, 20], seasonLength: 1 }, { alpha: 0.5 }).forecast(1) // [15]
 */
export const simpleSmoothingRecipe: SmoothingRecipe = {
  name: "simple smoothing",
  constants: [ALPHA],
  season: "none",
  fewestValues: () => 1,
  start: ({ values: [first = 0] }) => ({ level: first, trend: 0, seasons: [] }),
};

export const simpleSmoothing = smoothingMethod(simpleSmoothingRecipe);
