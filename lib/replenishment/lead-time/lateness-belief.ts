import type { Lateness } from "#lib/replenishment/lead-time/past-delivery";
import type { Day } from "#lib/units/day";

/** Chance of a delivery so many days after the promised day. */
export type LateChance = { readonly daysLate: number; readonly chance: number };

/** How late the next delivery may be. */
export type LatenessBelief = {
  /** from early to late; they add up to 1 */
  readonly chances: readonly LateChance[];
  /** share of the belief that is the promise itself, 0 to 1; the rest is own deliveries */
  readonly promiseShare: number;
  /** deliveries that it rests on, parts of an order counted as parts */
  readonly deliveries: number;
};

/** The promise counts as much as so many own deliveries; a guess. */
const PROMISE_WEIGHT = 4;
/** How a promise is kept before anything is known, in steps of a fifth of it; a guess. */
const KEPT: readonly number[] = [0.65, 0.2, 0.1, 0.05];
const STEP_SHARE = 0.2;
/** A delivery counts half as much as one that many orders later. */
const HALF_AFTER = 12;
/** Deliveries of the other part of the year count half: the build-up is September to December. */
const OTHER_SEASON = 0.5;
const PEAK_FROM_MONTH = 9;
const MONTH = { from: 5, to: 7 } as const;

/**
 * Belief of how late the next delivery may be: the supplier's promise, kept as promises are, and the own deliveries,
 * each with its weight. The promise fades as deliveries come in. What is still open and late counts as later than
 * today: its weight goes to the longer ones that are known, else to the day after.
 *
 * @param past how late own deliveries were, oldest first
 * @param question the promised days, and the day of the order that is asked about
 * @returns chances by days late
 * @throws RangeError when the promise is below 0
 * @see Ferguson (1973), A Bayesian analysis of some nonparametric problems: the predictive distribution of a
 * Dirichlet process; Efron (1967) for what is still open: its weight goes to the right (both from memory)
 * @example latenessBelief([], { promisedDays: 10, orderedOn: today }).chances // 0: 0.65, 2: 0.2, 4: 0.1, 6: 0.05
 */
export function latenessBelief(
  past: readonly Lateness[],
  question: { readonly promisedDays: number; readonly orderedOn: Day },
): LatenessBelief {
  const { promisedDays, orderedOn } = question;
  if (!(promisedDays >= 0)) {
    throw new RangeError(`latenessBelief requires promised days from 0, got ${promisedDays}`);
  }
  const weights = new Map<number, number>();
  const step = Math.max(1, Math.round(promisedDays * STEP_SHARE));
  for (const [at, share] of KEPT.entries()) add(weights, at * step, PROMISE_WEIGHT * share);
  const weighted = past.map((each, at) => ({
    ...each,
    weight: each.share * 0.5 ** ((past.length - 1 - at) / HALF_AFTER) * seasonWeight(each, orderedOn),
  }));
  for (const each of weighted) if (!each.isOpen) add(weights, each.days, each.weight);
  for (const each of weighted) if (each.isOpen) addLater(weights, each);
  const total = [...weights.values()].reduce((sum, weight) => sum + weight, 0);
  return {
    chances: [...weights]
      .map(([daysLate, weight]) => ({ daysLate, chance: weight / total }))
      .toSorted((a, b) => a.daysLate - b.daysLate),
    promiseShare: PROMISE_WEIGHT / total,
    deliveries: past.length,
  };
}

function seasonWeight({ orderedOn }: Lateness, asked: Day): number {
  return isBuildUp(orderedOn) === isBuildUp(asked) ? 1 : OTHER_SEASON;
}

function isBuildUp(on: Day): boolean {
  return Number(on.slice(MONTH.from, MONTH.to)) >= PEAK_FROM_MONTH;
}

function add(weights: Map<number, number>, days: number, weight: number): void {
  weights.set(days, (weights.get(days) ?? 0) + weight);
}

function addLater(
  weights: Map<number, number>,
  { days, weight }: { readonly days: number; readonly weight: number },
): void {
  const later = [...weights].filter(([each]) => each >= days);
  const sum = later.reduce((before, [, each]) => before + each, 0);
  if (sum === 0) add(weights, days, weight);
  for (const [each, of] of later) add(weights, each, (weight * of) / sum);
}
