import { mean } from "simple-statistics";
import { dampedTrend } from "#lib/forecast/methods/holt";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";
import { theta } from "#lib/forecast/methods/theta";

/** What the shop as a whole uses a step, and how it is shared out. */
export type LevelAndShare = {
  /** expected sum over all series in each coming step */
  readonly level: number;
  /** one a series, in their order; they add up to 1 */
  readonly shares: readonly number[];
};

/** What a week says of the shares fades by so much with every week that passes. A guess, no source. */
const DISCOUNT = 0.93;
const LEVEL_METHODS = [simpleSmoothing, dampedTrend, theta];
/** Fewer weeks show no trend. */
const FEWEST_FOR_TREND = 6;
/** Fewer weeks say little of a rate. A guess, no source. */
const FEWEST_FOR_RATE = 4;
/** Belief that every series has some share, in pieces. */
const PIECES_OF_BELIEF = 0.5;

/**
 * The shop's level and its series' shares: in a small shop the item types rise and fall together, so the
 * level is learnt from all of them at once, and each one's share from many weeks.
 *
 * @param series pieces a week of each item type, all of the same length, oldest first
 * @returns level of the next step by the mean of simple smoothing, damped trend and theta on the sums (the first alone
 * while they are few), shares from discounted rates since each one's first piece
 * @throws RangeError when there is no series or no value, or the lengths differ
 * @see Gross and Sohl (1990), Disaggregation methods to expedite product line forecasting, Journal of
 * Forecasting 9; Makridakis and Hibon (2000), The M3-Competition, International Journal of Forecasting 16, for means of
 * a few methods (both from memory)
 * @example levelAndShare([[6, 6], [2, 2]]).level // 8
 */
export function levelAndShare(series: readonly (readonly number[])[]): LevelAndShare {
  const [first] = series;
  if (first === undefined || first.length === 0 || series.some((each) => each.length !== first.length)) {
    throw new RangeError(
      `levelAndShare requires series of one length above 0, got ${series.map((each) => each.length)}`,
    );
  }
  const totals = first.map((_, week) => series.reduce((sum, each) => sum + (each[week] ?? 0), 0));
  const level = nextTotal(totals);
  const weights = series.map(discountedRate);
  const weight = weights.reduce((sum, each) => sum + each, 0);
  return { level, shares: weights.map((each) => each / weight) };
}

function nextTotal(totals: readonly number[]): number {
  const series = { values: totals, seasonLength: 1 };
  const methods = totals.length < FEWEST_FOR_TREND ? [simpleSmoothing] : LEVEL_METHODS;
  return Math.max(0, mean(methods.map((method) => method.fitted(series).forecast(1)[0] ?? 0)));
}

/**
 * Pieces a week since the first: the weeks before say nothing of what was not there yet. Of the first four weeks some
 * of those before are in it, so that a single good week does not take the others' share.
 */
function discountedRate(values: readonly number[]): number {
  const first = values.findIndex((value) => value > 0);
  const since = values.slice(Math.max(0, Math.min(first, values.length - FEWEST_FOR_RATE)));
  return (discountedSum(since) + PIECES_OF_BELIEF) / discountedSum(since.map(() => 1));
}

function discountedSum(values: readonly number[]): number {
  return values.reduce((sum, value) => sum * DISCOUNT + value, 0);
}
