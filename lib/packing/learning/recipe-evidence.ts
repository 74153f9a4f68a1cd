import { countEquations } from "#lib/packing/learning/count-equations";
import type { CountInterval } from "#lib/packing/learning/count-interval";
import { type FactorView, factorBeliefs, OWN_DEVIATION } from "#lib/packing/learning/factor-beliefs";
import { misreadCounts } from "#lib/packing/learning/misread-counts";
import { type StepBundle, stepBundles } from "#lib/packing/learning/step-bundles";
import { type MixturePart, mixtureMoments, mixtureQuantile } from "#lib/statistics/mixture";
import type { Day } from "#lib/units/day";

/** Real use over the cards: 1.18 means 13 sheets where the card says 11. `low` and `high` hold it 9 times in 10. */
export type UseFactor = {
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  readonly deviation: number;
  /** the distribution */
  readonly parts: readonly MixturePart[];
};

/** What is known of one step, or of several of one recipe. */
export type StepEvidence = UseFactor & {
  readonly recipeKey: string;
  readonly stepKeys: readonly string[];
  /** what each step is of their use, adding up to 1 */
  readonly shares: readonly number[];
  /** counts that saw it used */
  readonly counts: number;
  /** false where the counts say little beyond what is guessed of any card, or cannot part it from other steps */
  readonly told: boolean;
  /** other steps with which it can be mixed up: where one takes more, the other takes less */
  readonly mixedUpWith: readonly string[];
};

/** What the counts of one supply say about its cards. */
export type RecipeEvidence = {
  /** all of the supply's use; null without any use by the cards */
  readonly total: UseFactor | null;
  /** one entry for each step; for several that always go together one entry */
  readonly steps: readonly StepEvidence[];
  /** all of the supply that a recipe takes, where it has more than one such entry: often surer than each of them */
  readonly recipes: readonly StepEvidence[];
  /** intervals between counts */
  readonly counts: number;
};

/** What is known of the cards besides the counts. */
export type CardsToday = {
  /** steps of the recipes that hold today; others are earlier versions, which say nothing about those of today */
  readonly holding: ReadonlySet<string>;
  /** how often the seller said that a step's card is right */
  readonly noes: ReadonlyMap<string, number>;
};

/** A "no" to a proposal is believed like a measurement that the card is right within 10 %. A guess. */
const NO_DEVIATION = 0.1;
/** A step is told where its deviation fell below this share of what is guessed of any card's own part. */
const TOLD_SHARE = 0.6;
const MIXED_UP = -0.5;
const TAIL = 0.05;

/**
 * What a supply's counts say about what its recipe steps really take.
 *
 * @param intervals from count to count, oldest first
 * @param today the day from which ages are counted: what is half a year old counts half
 * @param cards of today, and what the seller said about them
 * @returns the supply's factor, and those of steps as far as the counts tell them apart
 * @example recipeEvidence(eightCounts, today, { holding, noes: new Map() }).total?.factor // 1.18
 */
export function recipeEvidence(
  intervals: readonly CountInterval[],
  today: Day,
  cards: CardsToday,
): RecipeEvidence {
  const bundles = stepBundles(intervals);
  if (bundles.length === 0) return { total: null, steps: [], recipes: [], counts: intervals.length };
  const equations = misreadCounts(countEquations(intervals, bundles, today));
  const views = factorBeliefs(
    equations,
    bundles.map(({ stepKeys }) => ({
      saidRight: stepKeys.reduce((sum, key) => sum + (cards.noes.get(key) ?? 0) / NO_DEVIATION ** 2, 0),
      isPast: !stepKeys.some((key) => cards.holding.has(key)),
    })),
  );
  const uses = bundles.map(({ byCards }) =>
    byCards.reduce((sum, units, at) => sum + units * (equations.left[at] ?? 1), 0),
  );
  const whole = uses.reduce((sum, units) => sum + units, 0);
  return {
    total: factorOf(
      views,
      uses.map((units) => units / whole),
    ),
    steps: bundles.map((bundle, at) => stepEvidence(bundles, bundle, at, views)),
    recipes: recipeEntries(bundles, views, uses),
    counts: intervals.length,
  };
}

/**
 * What is known of a single step of a bundle: the bundle's factor, and what is guessed of the step's own part.
 *
 * @param evidence of the bundle
 * @param stepKey one of its steps
 * @returns as the bundle's, wider where there is more than one step
 * @throws RangeError when the step is not of the bundle
 * @example singleStepFactor(bundle, "mug/wrap").low // below the bundle's
 */
export function singleStepFactor(evidence: StepEvidence, stepKey: string): UseFactor {
  const share = evidence.shares[evidence.stepKeys.indexOf(stepKey)];
  if (share === undefined) {
    throw new RangeError(`singleStepFactor requires a step of the bundle, got ${stepKey}`);
  }
  const squares = evidence.shares.reduce((sum, each) => sum + each * each, 0);
  const own = OWN_DEVIATION * Math.sqrt(Math.max(0, 1 - (share * share) / squares));
  return described(evidence.parts.map((part) => ({ ...part, scale: Math.hypot(part.scale, own) })));
}

function stepEvidence(
  bundles: readonly StepBundle[],
  { recipeKey, stepKeys, shares, byCards }: StepBundle,
  at: number,
  views: readonly FactorView[],
): StepEvidence {
  const factor = factorOf(
    views,
    bundles.map((_, other) => Number(other === at)),
  );
  const spread = jointSpread(views);
  const mixedUpWith = bundles.flatMap((other, place) => {
    const product = Math.sqrt((spread[at]?.[at] ?? 1) * (spread[place]?.[place] ?? 1));
    const isMixedUp = place !== at && (spread[at]?.[place] ?? 0) / product <= MIXED_UP;
    return isMixedUp ? other.stepKeys : [];
  });
  return {
    ...factor,
    recipeKey,
    stepKeys,
    shares,
    counts: byCards.filter((units) => units > 0).length,
    told: factor.deviation <= TOLD_SHARE * OWN_DEVIATION,
    mixedUpWith,
  };
}

/** The recipes with several bundles, each bundle counted by its use. */
function recipeEntries(
  bundles: readonly StepBundle[],
  views: readonly FactorView[],
  uses: readonly number[],
): StepEvidence[] {
  return [...new Set(bundles.map(({ recipeKey }) => recipeKey))].flatMap((recipeKey) => {
    const own = bundles.map((bundle, at) => (bundle.recipeKey === recipeKey ? (uses[at] ?? 0) : 0));
    const whole = own.reduce((sum, units) => sum + units, 0);
    const parts = bundles.flatMap((bundle, at) =>
      bundle.recipeKey === recipeKey ? [{ bundle, share: (own[at] ?? 0) / whole }] : [],
    );
    if (parts.length < 2 || whole === 0) return [];
    const factor = factorOf(
      views,
      own.map((units) => units / whole),
    );
    return {
      ...factor,
      recipeKey,
      stepKeys: parts.flatMap(({ bundle }) => bundle.stepKeys),
      shares: parts.flatMap(({ bundle, share }) => bundle.shares.map((each) => each * share)),
      counts: parts
        .map(({ bundle }) => bundle.byCards)
        .reduce((sum, byCards) => sum.map((units, at) => units + (byCards[at] ?? 0)))
        .filter((units) => units > 0).length,
      told: factor.deviation <= TOLD_SHARE * OWN_DEVIATION,
      mixedUpWith: [],
    };
  });
}

/** A sum of factors, each taken so many times. */
function factorOf(views: readonly FactorView[], times: readonly number[]): UseFactor {
  return described(
    views.map(({ weight, means, covariance }) => {
      const variance = times.reduce(
        (sum, left, row) =>
          sum +
          times.reduce((all, right, column) => all + left * right * (covariance[row]?.[column] ?? 0), 0),
        0,
      );
      return {
        weight,
        centre: times.reduce((sum, each, at) => sum + each * (means[at] ?? 1), 0),
        scale: Math.sqrt(variance),
        degrees: null,
      };
    }),
  );
}

function described(parts: readonly MixturePart[]): UseFactor {
  const { mean, variance } = mixtureMoments(parts);
  return {
    factor: mean,
    low: mixtureQuantile(parts, TAIL),
    high: mixtureQuantile(parts, 1 - TAIL),
    deviation: Math.sqrt(variance),
    parts,
  };
}

/** Covariance over all views. */
function jointSpread(views: readonly FactorView[]): number[][] {
  const size = views[0]?.means.length ?? 0;
  const places = Array.from({ length: size }, (_, at) => at);
  const mean = places.map((at) => views.reduce((sum, view) => sum + view.weight * (view.means[at] ?? 1), 0));
  return places.map((row) =>
    places.map((column) =>
      views.reduce((sum, { weight, means, covariance }) => {
        const [a, b] = [(means[row] ?? 1) - (mean[row] ?? 1), (means[column] ?? 1) - (mean[column] ?? 1)];
        return sum + weight * ((covariance[row]?.[column] ?? 0) + a * b);
      }, 0),
    ),
  );
}
