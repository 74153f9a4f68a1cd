import { modelText } from "#lib/optimisation/model-text";
import type { Solve, SolverAnswer } from "#lib/optimisation/solve";
import { type BlockingLimit, blockingLimits } from "#lib/purchasing/plan/blocking-limits";
import { checkedQuestion, type LeftOutOffer } from "#lib/purchasing/plan/checked-question";
import { type CostedPlan, costedPlan } from "#lib/purchasing/plan/costed-plan";
import { heuristicChoice } from "#lib/purchasing/plan/heuristic-choice";
import type { ModelGoal } from "#lib/purchasing/plan/model-columns";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import { type PlanFault, planFaults } from "#lib/purchasing/plan/plan-faults";
import { type PlanModel, planModel, planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { planReasons, type ReasonedLine } from "#lib/purchasing/plan/plan-reasons";
import { choiceOfValues, planStart } from "#lib/purchasing/plan/plan-start";
import { unavoidable } from "#lib/purchasing/plan/stock-rows";

/** How good a plan is known to be. */
export type PlanProof = {
  /** no plan costs less, minor units; null where nothing is proven */
  readonly boundMinor: number | null;
  /** how much cheaper a plan could be at most, as a share of this one's cost; null where nothing is proven */
  readonly gap: number | null;
  /** whether the gap is within the one that was asked for */
  readonly proven: boolean;
  /** seconds from the question to the answer */
  readonly seconds: number;
};

/** Why the plan is not the solver's. */
export type HeuristicWhy =
  /** no time was given */
  | { readonly kind: "no-time" }
  /** the solver found none in its time that is as cheap */
  | { readonly kind: "stopped" }
  /** the solver failed; its own words */
  | { readonly kind: "failed"; readonly message: string }
  /** the solver said that there is none, or gave one that breaks a rule */
  | { readonly kind: "unsound"; readonly faults: readonly PlanFault[] };

/** A plan, how good it is, where it comes from and why this week's lines are in it. */
export type PurchasePlan = CostedPlan & {
  readonly proof: PlanProof;
  readonly from: "solver" | "heuristic";
  /** null where the plan is the solver's */
  readonly why: HeuristicWhy | null;
  readonly reasons: readonly ReasonedLine[];
  /** litres at home right after the arrivals of the fullest week */
  readonly peakLitres: number;
};

/** The answer to a question. */
export type PlanAnswer =
  | { readonly kind: "plan"; readonly plan: PurchasePlan; readonly leftOut: readonly LeftOutOffer[] }
  | {
      readonly kind: "impossible";
      /** limits that keep needs from being met; empty where none could be named in time */
      readonly limits: readonly BlockingLimit[];
      /** the best that the limits allow, with needs unmet; null where they allow nothing at all */
      readonly nearest: PurchasePlan | null;
      readonly leftOut: readonly LeftOutOffer[];
    };

/** What the plan needs from outside. */
export type PlanMeans = {
  readonly solve: Solve;
  /** time for the plan, 0 for the heuristic alone; naming the limits that block may take two more */
  readonly seconds: number;
  /** stop when the plan is proven to be within this share of the cheapest */
  readonly gap: number;
  /** a clock in seconds */
  readonly now: () => number;
};

/**
 * The joint purchase plan: which packs to order from whom in which week, so that goods, delivery, handling,
 * holding and shortage, less what is left at the end, cost least within the limits.
 *
 * A heuristic makes a plan first; the solver begins with it, betters it and says how far from the cheapest it can
 * be. Whatever the solver gives is rounded, costed and checked by code of its own; the better sound plan counts.
 *
 * @param asked all of the plan
 * @param means solver, time, gap, clock
 * @returns a plan, or the limits that block one
 * @throws RangeError for a question that makes no sense, naming what is wrong
 */
export async function purchasePlan(asked: PlanQuestion, means: PlanMeans): Promise<PlanAnswer> {
  const begun = means.now();
  const left = () => means.seconds - (means.now() - begun);
  const { question, leftOut } = checkedQuestion(asked);
  const share = question.aim.kind === "least-room" ? 0.5 : 1;
  let found = await searched(question, { kind: "cost" }, means, left() * share, null);
  const { aim } = question;
  if (aim.kind === "least-room" && found.plan !== null) {
    const { totalMinor, endValueMinor } = found.plan.costs;
    const mostMinor = totalMinor + aim.extraShare * (totalMinor + endValueMinor);
    const roomy = await searched(question, { kind: "room", mostMinor }, means, left(), found);
    if (roomy.plan !== null) found = roomy;
  }
  const isBlocked = found.plan === null || lacksAvoidably(question, found.plan);
  const isFailed = found.why?.kind === "failed";
  const limits = isBlocked && !isFailed ? await limitsOrNone(question, means, left()) : [];
  const plan = found.plan === null ? null : finished(question, found, means.now() - begun);
  if (plan !== null && limits.length === 0) return { kind: "plan", plan, leftOut };
  return { kind: "impossible", limits, nearest: plan, leftOut };
}

type Found = {
  readonly choice: PlanChoice;
  /** null where neither way found a sound plan */
  readonly plan: CostedPlan | null;
  readonly from: "solver" | "heuristic";
  readonly why: HeuristicWhy | null;
  readonly bound: number;
  readonly isOptimal: boolean;
};

/** The better of the heuristic's and the solver's plan. For the room goal the plan `before` takes the first's place. */
async function searched(
  question: PlanQuestion,
  goal: ModelGoal,
  means: PlanMeans,
  seconds: number,
  before: Found | null,
): Promise<Found> {
  const until = means.now() + seconds;
  const trying = means.now() + seconds * TRYING_SHARE;
  // Without any time the heuristic is all there is, and ends by itself.
  const isOver = () => means.seconds > 0 && means.now() > trying;
  const parts = planParts(question);
  const isSound = (each: PlanChoice) => planFaults(question, costedPlan(question, each)).length === 0;
  const choice = before?.choice ?? heuristicChoice(question, parts.supplies, parts.slots, isOver);
  const plan = isSound(choice) ? costedPlan(question, choice) : null;
  const first: Found = before ?? {
    choice,
    plan,
    from: "heuristic",
    why: null,
    bound: -Infinity,
    isOptimal: false,
  };
  const model = planModel(question, goal);
  const time = until - means.now();
  if (means.seconds <= 0 || time <= 0)
    return { ...first, why: before === null ? { kind: "no-time" } : first.why };
  const outcome = await solved(model, means, time, plan === null ? null : choice);
  if (outcome.kind === "failed") return before ?? { ...first, why: outcome };
  return bettered(question, goal, model, first, outcome.answer);
}

/** The heuristic takes at most about this share of the time. */
const TRYING_SHARE = 0.3;

type Outcome =
  | { readonly kind: "answer"; readonly answer: SolverAnswer }
  | { readonly kind: "failed"; readonly message: string };

async function solved(
  model: PlanModel,
  means: PlanMeans,
  seconds: number,
  start: PlanChoice | null,
): Promise<Outcome> {
  if (model.model.columns.length === 0) {
    return { kind: "answer", answer: { kind: "optimal", values: {}, bound: 0, seconds: 0 } };
  }
  const known = start === null ? {} : { start: planStart(model, start) };
  try {
    const answer = await means.solve(modelText(model.model), { seconds, gap: means.gap, ...known });
    return { kind: "answer", answer };
  } catch (error) {
    // Not lost: the plan carries the solver's words to the screen.
    return { kind: "failed", message: error instanceof Error ? error.message : String(error) };
  }
}

function bettered(
  question: PlanQuestion,
  goal: ModelGoal,
  model: PlanModel,
  first: Found,
  answer: SolverAnswer,
): Found {
  const isCost = goal.kind === "cost";
  const bound = isCost ? answer.bound : first.bound;
  const isOptimal = isCost ? answer.kind === "optimal" : first.isOptimal;
  const kept = { ...first, bound, isOptimal };
  if (answer.values === null) {
    const why: HeuristicWhy =
      answer.kind === "stopped" ? { kind: "stopped" } : { kind: "unsound", faults: [] };
    return { ...kept, why: isCost ? why : first.why };
  }
  const choice = choiceOfValues(model, answer.values);
  const plan = costedPlan(question, choice);
  const faults = planFaults(question, plan);
  if (faults.length > 0)
    return { ...kept, isOptimal: false, why: isCost ? { kind: "unsound", faults } : first.why };
  const measure = isCost
    ? (of: CostedPlan) => of.costs.totalMinor
    : (of: CostedPlan) => peakLitres(question, of);
  const isBetter = first.plan === null || measure(plan) <= measure(first.plan) + 1e-6;
  return isBetter
    ? { choice, plan, from: "solver", why: null, bound, isOptimal }
    : { ...kept, why: isCost ? { kind: "stopped" } : first.why };
}

function finished(question: PlanQuestion, found: Found, seconds: number): PurchasePlan {
  const plan = costedPlan(question, found.choice);
  const total = plan.costs.totalMinor;
  const bound = Number.isFinite(found.bound) ? Math.min(found.bound, total) : null;
  const gap = bound === null ? null : (total - bound) / Math.max(1, Math.abs(total));
  const proof = { boundMinor: bound, gap, proven: found.isOptimal, seconds };
  const reasons = planReasons(question, found.choice);
  return {
    ...plan,
    proof,
    from: found.from,
    why: found.why,
    reasons,
    peakLitres: peakLitres(question, plan),
  };
}

function peakLitres(question: PlanQuestion, { stock }: CostedPlan): number {
  const sums = Array.from({ length: question.weeks }, (_, week) =>
    question.supplies.reduce(
      (sum, { litres }, index) => sum + litres * Math.max(0, stock[index]?.after[week] ?? 0),
      0,
    ),
  );
  return Math.max(0, ...sums);
}

/** Whether something is owed, or below the wanted stock where that must be kept, that an order could have met. */
function lacksAvoidably(question: PlanQuestion, plan: CostedPlan): boolean {
  const { supplies } = planParts(question);
  return plan.shortages.some(({ supplyId, week, owed, missing }) => {
    const of = supplies.find(({ supply }) => supply.id === supplyId);
    if (of === undefined) return false;
    if (owed > unavoidable(of, week) + NEARLY_NOTHING) return true;
    const wanted = of.supply.wanted[week] ?? 0;
    return question.keepsWanted === true && missing > unavoidable(of, week, wanted) + NEARLY_NOTHING;
  });
}

const NEARLY_NOTHING = 1e-6;

/** Least time for naming the limits, also where the plan itself took all. */
const LEAST_SECONDS = 2;

async function limitsOrNone(
  question: PlanQuestion,
  means: PlanMeans,
  left: number,
): Promise<BlockingLimit[]> {
  if (means.seconds <= 0) return [];
  const seconds = Math.max(LEAST_SECONDS, left);
  return (await blockingLimits(question, means.solve, { seconds, gap: RELAXATION_GAP })) ?? [];
}

const RELAXATION_GAP = 1e-4;
