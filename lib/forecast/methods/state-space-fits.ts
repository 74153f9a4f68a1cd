import type { Series } from "#lib/forecast/methods/forecasting-method";
import { type StateSpaceFit, stateSpaceFit } from "#lib/forecast/methods/state-space-fit";
import { stateSpaceModels } from "#lib/forecast/methods/state-space-model";

/**
 * All state space models that suit a series, fitted: the one with the least corrected Akaike criterion first,
 * the simpler of equals before the other.
 *
 * @param series of at least five values
 * @returns at least one
 * @throws RangeError when the series has fewer values
 * @see Hyndman, Koehler, Snyder and Grose (2002), International Journal of Forecasting 18 (from memory)
 * @example stateSpaceFits({ values: [12, 15, 11, 14, 13, 12], seasonLength: 1 })[0].model
 */
export function stateSpaceFits(series: Series): [StateSpaceFit, ...StateSpaceFit[]] {
  const [first, ...others] = stateSpaceModels(series)
    .map((model) => stateSpaceFit(model, series))
    .toSorted((a, b) => a.correctedAkaike - b.correctedAkaike);
  if (first === undefined) {
    throw new RangeError(`stateSpaceFits requires 5 values, got ${series.values.length}`);
  }
  return [first, ...others];
}
