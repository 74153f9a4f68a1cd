import type { CountInterval } from "#lib/packing/learning/count-interval";
import { unitsOf } from "#lib/units/amount";

/** Steps of a recipe that always went together in one proportion: no count can tell them apart. Most are of one step. */
export type StepBundle = {
  readonly recipeKey: string;
  readonly stepKeys: readonly string[];
  /** share of the bundle's use by each step, adding up to 1 */
  readonly shares: readonly number[];
  /** what the cards say, use units, by interval */
  readonly byCards: readonly number[];
  /** the sum over uses of the square of one use, by interval: the more single uses, the more they level out */
  readonly squares: readonly number[];
};

/** Cosine of two rows of uses from which on they go in one proportion. */
const SAME_DIRECTION = 0.999;

/**
 * What the cards say for each interval, with steps that cannot be told apart taken as one.
 *
 * @param intervals of one supply, oldest first
 * @returns bundles in the order their steps are met, without those that were never used
 * @example stepBundles(intervals).map(({ stepKeys }) => stepKeys) // [["mug/wrap", "mug/fill"], ["vase/wrap"]]
 */
export function stepBundles(intervals: readonly CountInterval[]): readonly StepBundle[] {
  const recipes = new Map(
    intervals.flatMap(({ uses }) => uses.map(({ stepKey, recipeKey }) => [stepKey, recipeKey])),
  );
  const bundles: StepBundle[] = [];
  for (const [stepKey, recipeKey] of recipes) {
    const step = singleStep(intervals, stepKey, recipeKey);
    if (!step.byCards.some((units) => units > 0)) continue;
    const at = bundles.findIndex(
      (bundle) => bundle.recipeKey === recipeKey && cosine(bundle.byCards, step.byCards) >= SAME_DIRECTION,
    );
    const like = bundles[at];
    if (like === undefined) bundles.push(step);
    else bundles[at] = joined(like, step);
  }
  return bundles;
}

function singleStep(intervals: readonly CountInterval[], stepKey: string, recipeKey: string): StepBundle {
  const uses = intervals.map((interval) => interval.uses.filter((use) => use.stepKey === stepKey));
  const sum = (of: (units: number) => number): number[] =>
    uses.map((list) => list.reduce((all, { times, amount }) => all + times * of(unitsOf(amount)), 0));
  return {
    recipeKey,
    stepKeys: [stepKey],
    shares: [1],
    byCards: sum((units) => units),
    squares: sum((units) => units * units),
  };
}

function joined(bundle: StepBundle, step: StepBundle): StepBundle {
  const [before, more] = [total(bundle.byCards), total(step.byCards)];
  return {
    recipeKey: bundle.recipeKey,
    stepKeys: [...bundle.stepKeys, ...step.stepKeys],
    shares: [...bundle.shares.map((share) => (share * before) / (before + more)), more / (before + more)],
    byCards: bundle.byCards.map((units, at) => units + (step.byCards[at] ?? 0)),
    squares: bundle.squares.map((square, at) => square + (step.squares[at] ?? 0)),
  };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function cosine(a: readonly number[], b: readonly number[]): number {
  const product = (first: readonly number[], second: readonly number[]): number =>
    first.reduce((sum, value, at) => sum + value * (second[at] ?? 0), 0);
  return product(a, b) / Math.sqrt(product(a, a) * product(b, b));
}
