import { type CountEquations, errorCovariance } from "#lib/packing/learning/count-equations";
import { cholesky, choleskyLogDeterminant, choleskySolve } from "#lib/statistics/cholesky";
import { tridiagonalFactor, tridiagonalWhite } from "#lib/statistics/tridiagonal";

/** One way to see the counts: means of all factors (real use over the cards) with their covariance, and its weight. */
export type FactorView = {
  readonly weight: number;
  readonly means: readonly number[];
  readonly covariance: readonly (readonly number[])[];
};

/**
 * Guesses of what cards are like. A supply's factors share a common part (1 within 6 %, or anything within 50 %: some
 * supplies are carded far off), and each step has a part of its own: all cards right within 5 %, all off by some 20 %, or
 * a single one off by some 25 %.
 */
const COMMON = [
  { deviation: 0.06, weight: 0.6 },
  { deviation: 0.5, weight: 0.4 },
];
const NEARLY_RIGHT = 0.05;
const ALL_OFF = 0.2;
const ONE_OFF = 0.25;
const PAST_DEVIATION = 0.5;
const OWN_WEIGHTS = { right: 0.35, all: 0.4, one: 0.25 };
/** Errors may be smaller or larger than guessed: factors of the variances of uses and of counts, with weights. */
const ERROR_SIZES = [
  { factor: 0.4, weight: 0.25 },
  { factor: 1, weight: 0.5 },
  { factor: 2.5, weight: 0.25 },
];
/** Views that weigh less than this share of the heaviest are left out. */
const NEGLIGIBLE = 1e-3;

/** Deviation of a step's own part under all these guesses together. */
export const OWN_DEVIATION = Math.sqrt(
  OWN_WEIGHTS.right * NEARLY_RIGHT ** 2 + OWN_WEIGHTS.all * ALL_OFF ** 2 + OWN_WEIGHTS.one * ONE_OFF ** 2,
);

/** What is known of a bundle's cards besides the counts. */
export type CardBelief = {
  /** how strongly the seller said that the card is right: 1 / variance */
  readonly saidRight: number;
  /** an earlier version, with a factor of its own that says nothing about the cards of today */
  readonly isPast: boolean;
};

type Prior = { readonly logWeight: number; readonly common: number; readonly own: readonly number[] };

/**
 * What counts say about factors: a regression with normal errors under every combination of what cards and errors may be
 * like, each weighted by how well it foresaw the counts.
 *
 * @param equations of `countEquations`, misread counts widened
 * @param cards for each bundle what is known besides
 * @returns views whose weights add up to 1
 * @see Bayesian linear regression and model averaging: Hoeting, Madigan, Raftery and Volinsky (1999), Bayesian model
 * averaging: a tutorial, Statistical Science 14 (from memory)
 * @example factorBeliefs(equations, [{ saidRight: 0, isPast: false }])[0]?.means // near [1.18]
 */
export function factorBeliefs(
  equations: CountEquations,
  cards: readonly CardBelief[],
): readonly FactorView[] {
  const priors = priorsOf(cards);
  const scored = ERROR_SIZES.flatMap((use) =>
    ERROR_SIZES.flatMap((count) => {
      const evidence = evidenceOf(equations, use.factor, count.factor, cards);
      const first = evidence.logLikelihood + Math.log(use.weight * count.weight);
      return priors.map((prior) => scoredView(evidence, prior, cards, first));
    }),
  );
  const most = Math.max(...scored.map(({ score }) => score));
  const views = scored
    .filter(({ score }) => score - most > Math.log(NEGLIGIBLE))
    .map(({ score, view }) => ({ weight: Math.exp(score - most), ...view() }));
  const whole = views.reduce((sum, { weight }) => sum + weight, 0);
  return views.map((view) => ({ ...view, weight: view.weight / whole }));
}

function priorsOf(cards: readonly CardBelief[]): Prior[] {
  const all = (deviation: number): number[] =>
    cards.map(({ isPast }) => (isPast ? PAST_DEVIATION : deviation) ** 2);
  const held = cards.flatMap(({ isPast }, at) => (isPast ? [] : [at]));
  const own = [
    { weight: OWN_WEIGHTS.right, own: all(NEARLY_RIGHT) },
    { weight: OWN_WEIGHTS.all, own: all(ALL_OFF) },
    ...held.map((at) => ({
      weight: OWN_WEIGHTS.one / held.length,
      own: all(NEARLY_RIGHT).with(at, ONE_OFF ** 2),
    })),
  ];
  return COMMON.flatMap((common) =>
    own.map((each) => ({
      logWeight: Math.log(common.weight * each.weight),
      common: common.deviation ** 2,
      own: each.own,
    })),
  );
}

/** What the counts say by themselves under some size of errors: XᵀΣ⁻¹X, XᵀΣ⁻¹y and the likelihood of factors of 1. */
type Evidence = {
  readonly matrix: readonly (readonly number[])[];
  readonly right: readonly number[];
  readonly logLikelihood: number;
};

function evidenceOf(
  equations: CountEquations,
  useFactor: number,
  countFactor: number,
  cards: readonly CardBelief[],
): Evidence {
  const factor = tridiagonalFactor(errorCovariance(equations, useFactor, countFactor));
  const faded = (values: readonly number[]): number[] =>
    tridiagonalWhite(
      factor,
      values.map((value, at) => value * Math.sqrt(equations.left[at] ?? 1)),
    );
  const white = faded(equations.beyond);
  const columns = cards.map((_, column) => faded(equations.byCards.map((row) => row[column] ?? 0)));
  const logDeterminant = factor.pivots.reduce(
    (sum, pivot, at) => sum + (equations.left[at] ?? 1) * Math.log(pivot),
    0,
  );
  return {
    matrix: columns.map((left, row) =>
      columns.map((right, column) => dot(left, right) + (row === column ? (cards[row]?.saidRight ?? 0) : 0)),
    ),
    right: columns.map((column) => dot(column, white)),
    logLikelihood: -(logDeterminant + dot(white, white)) / 2,
  };
}

function scoredView(
  { matrix, right }: Evidence,
  prior: Prior,
  cards: readonly CardBelief[],
  first: number,
): { readonly score: number; readonly view: () => Omit<FactorView, "weight"> } {
  // Inverse of common · h hᵀ + diag(own), by Sherman and Morrison; h is 1 for cards of today, 0 for past ones.
  const precisions = prior.own.map((variance) => 1 / variance);
  const held = precisions.map((precision, at) => (cards[at]?.isPast === true ? 0 : precision));
  const sum = 1 + prior.common * held.reduce((all, each) => all + each, 0);
  const shared = prior.common / sum;
  const factor = cholesky(
    matrix.map((entries, row) =>
      entries.map((entry, column) => {
        const own = row === column ? (precisions[row] ?? 0) : 0;
        return entry + own - shared * (held[row] ?? 0) * (held[column] ?? 0);
      }),
    ),
  );
  const beyond = choleskySolve(factor, right);
  const logPrior = prior.own.reduce((all, variance) => all + Math.log(variance), Math.log(sum));
  return {
    score: first + prior.logWeight + (dot(right, beyond) - logPrior - choleskyLogDeterminant(factor)) / 2,
    view: () => ({
      means: beyond.map((value) => 1 + value),
      covariance: right.map((_, row) =>
        choleskySolve(
          factor,
          right.map((_entry, column) => Number(row === column)),
        ),
      ),
    }),
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < a.length; at += 1) sum += (a[at] ?? 0) * (b[at] ?? 0);
  return sum;
}
