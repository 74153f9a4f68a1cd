import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";

/** What the shop as a whole uses a step, and how it is shared out. */
export type LevelAndShare = {
  /** expected sum over all series in each coming step */
  readonly level: number;
  /** one a series, in their order; they add up to 1 */
  readonly shares: readonly number[];
};

/** What a week says of the shares fades by so much with every week that passes. A guess, no source. */
const DISCOUNT = 0.93;
/** Belief that every series has some share, in pieces. */
const PIECES_OF_BELIEF = 0.5;

/**
 * The shop's level and its series' shares: in a small shop the item types rise and fall together, so the
 * level is learnt from all of them at once, and each one's share from many weeks.
 *
 * @param series pieces a week of each item type, all of the same length, oldest first
 * @returns level by simple smoothing of the sums, shares from discounted sums
 * @throws RangeError when there is no series or no value, or the lengths differ
 * @see Gross and Sohl (1990), Disaggregation methods to expedite product line forecasting, Journal of
 * Forecasting 9 (from memory)
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
  const [level = 0] = simpleSmoothing.fitted({ values: totals, seasonLength: 1 }).forecast(1);
  const weights = series.map(discountedSum);
  const weight = weights.reduce((sum, each) => sum + each, 0);
  return { level, shares: weights.map((each) => each / weight) };
}

function discountedSum(values: readonly number[]): number {
  return values.reduce((sum, value) => sum * DISCOUNT + value, 0) + PIECES_OF_BELIEF;
}
