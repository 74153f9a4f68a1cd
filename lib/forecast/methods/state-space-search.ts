import type { SmoothingRule, SmoothingState } from "#lib/forecast/methods/smoothing";
import type { StateSpaceModel } from "#lib/forecast/methods/state-space-model";

/** Least and most of a number that is searched, and the values from whose combinations the searches start. */
type Searched = { readonly bounds: readonly [number, number]; readonly starts: readonly number[] };

/** The numbers that a search changes, and what they stand for. */
export type StateSpaceSearch = {
  /** alpha first */
  readonly constants: readonly Searched[];
  /** from the constants searched to the rule */
  readonly ruleOf: (found: readonly number[]) => SmoothingRule;
  /** from a state to the numbers searched */
  readonly numbersOf: (state: SmoothingState) => readonly number[];
  /** and back */
  readonly stateOf: (numbers: readonly number[]) => SmoothingState;
  readonly stateBoundsOf: (numbers: readonly number[]) => (readonly [number, number])[];
};

const SHARE = [0.0001, 0.9999] as const;
const ALPHA: Searched = { bounds: SHARE, starts: [0.0001, 0.03, 0.1, 0.25, 0.5, 0.9] };
const BETA: Searched = { bounds: SHARE, starts: [0.0001, 0.05, 0.3, 0.98] };
const PHI: Searched = { bounds: [0.8, 0.98], starts: [0.85, 0.97] };
const GAMMA: Searched = { bounds: SHARE, starts: [0.0001, 0.1, 0.6] };
/** No start lies further off than so many times the mean value. */
const STATE_BOUND = [-50, 50] as const;
const FACTOR_BOUND = [0.01, 100] as const;

/**
 * What is searched for a model. Alpha lies in [0.0001, 0.9999], beta below alpha, gamma below 1 - alpha and
 * phi in [0.8, 0.98]: so beta is searched as a share of alpha (which is betaStar) and gamma as a share of
 * 1 - alpha, and the bounds are plain ones.
 *
 * @param model which one
 * @see Hyndman, Koehler, Ord and Snyder (2008), Forecasting with Exponential Smoothing, for the bounds, and
 * R's `forecast` for those of phi (from memory)
 */
export function stateSpaceSearch({ trend, season }: StateSpaceModel): StateSpaceSearch {
  const hasTrend = trend !== "none";
  const isDamped = trend === "damped";
  const hasSeason = season !== "none";
  const constants = [
    ALPHA,
    ...(hasTrend ? [BETA] : []),
    ...(isDamped ? [PHI] : []),
    ...(hasSeason ? [GAMMA] : []),
  ];
  const firstSeason = hasTrend ? 2 : 1;
  return {
    constants,
    ruleOf: ([alpha = 0, ...others]) => {
      const [betaStar = 0, phi = 1] = hasTrend ? others : [];
      const share = hasSeason ? (others.at(constants.length - 2) ?? 0) : 0;
      return {
        constants: { alpha, betaStar, phi: isDamped ? phi : 1, gamma: share * (1 - alpha) },
        season,
        seasonFrom: "old-level",
      };
    },
    numbersOf: ({ level, trend: slope, seasons }) => [level, ...(hasTrend ? [slope] : []), ...seasons],
    stateOf: (numbers) => ({
      level: numbers[0] ?? 0,
      trend: hasTrend ? (numbers[1] ?? 0) : 0,
      seasons: numbers.slice(firstSeason),
    }),
    stateBoundsOf: (numbers) =>
      numbers.map((_, index) =>
        season === "multiplicative" && index >= firstSeason ? FACTOR_BOUND : STATE_BOUND,
      ),
  };
}
