import { binomialInterval } from "#lib/statistics/binomial-interval";

/** What was promised at most, and what the scale said, milligrams. */
type PromisedParcel = { readonly promisedMg: number; readonly scaleMg: number };

/** How often promises held. `share` is null without any; `low` and `high` hold what it may truly be, 9 times in 10. */
type PromisesKept = {
  readonly made: number;
  readonly kept: number;
  readonly share: number | null;
  readonly low: number;
  readonly high: number;
};

const LEVEL = 0.9;

/**
 * How often past promises of a weight held: the parcel weighed no more than was promised.
 *
 * @param promises parcels with a promise and a reading
 * @returns counts, share, and the interval of Clopper and Pearson, honest however few they are
 * @example promisesKept([{ promisedMg: 1000000, scaleMg: 1020000 }]).share // 0
 */
export function promisesKept(promises: readonly PromisedParcel[]): PromisesKept {
  const made = promises.length;
  const kept = promises.filter(({ promisedMg, scaleMg }) => scaleMg <= promisedMg).length;
  return { made, kept, share: made === 0 ? null : kept / made, ...binomialInterval(kept, made, LEVEL) };
}
