import { type BlockingLimit, blockingLimits } from "#lib/purchasing/plan/blocking-limits";
import { checkedQuestion, type LeftOutOffer } from "#lib/purchasing/plan/checked-question";
import { type CostedPlan, costedPlan } from "#lib/purchasing/plan/costed-plan";
import type { HeuristicWhy } from "#lib/purchasing/plan/heuristic-why";
import { lacksAvoidably } from "#lib/purchasing/plan/lacks-avoidably";
import { peakLitres } from "#lib/purchasing/plan/peak-litres";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";
import { planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { planReasons, type ReasonedLine } from "#lib/purchasing/plan/plan-reasons";
import { type Found, isNear, planSearch } from "#lib/purchasing/plan/plan-search";
import { solvedPlan } from "#lib/purchasing/plan/solved-plan";

/** How good a plan is known to be. */
export type PlanProof = {
  /** no plan costs less, minor units; null where nothing is proven */
  readonly boundMinor: number | null;
  /** how much cheaper a plan could be at most, as a share of this one's cost; null where nothing is proven */
  readonly gap: number | null;
  /** whether the gap is within the one asked for; with the aim "least-room" that of the cheapest plan found first */
  readonly proven: boolean;
  /** seconds from the question to the answer */
  readonly seconds: number;
};

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

/**
 * The joint purchase plan: which packs to order from whom in which week, so that goods, delivery, handling,
 * holding and shortage, less what is left at the end, cost least within the limits.
 *
 * A heuristic makes a plan first, prices shared among the supplies prove how far from the cheapest it can be, and a
 * search betters it. Where the plan is not near enough yet and the question not too large, the solver goes on from it.
 * Whatever the solver gives is rounded, costed and checked by code of its own; the better sound plan counts, and the
 * better bound.
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
  const { aim } = question;
  const share = aim.kind === "least-room" ? 0.5 : 1;
  let found = await cheapest(question, means, left() * share);
  const total = found.plan?.costs.totalMinor ?? Number.POSITIVE_INFINITY;
  const proven = isNear(total, found.bound, means.gap + ROUNDING);
  if (aim.kind === "least-room" && found.plan !== null && means.seconds > 0) {
    const { totalMinor, endValueMinor } = found.plan.costs;
    const mostMinor = totalMinor + aim.extraShare * (totalMinor + endValueMinor);
    found = await solvedPlan(question, { kind: "room", mostMinor }, means, left(), found);
  }
  const isBlocked =
    found.plan === null ||
    (!found.isMet && lacksAvoidably(question, found.plan, planParts(question).supplies));
  const isFailed = found.why?.kind === "failed";
  const limits = isBlocked && !isFailed ? await limitsOrNone(question, means, left()) : [];
  const plan = found.plan === null ? null : finished(question, found, proven, begun, means);
  // Where no limit could be named in time, the need is unmet all the same, and that is said.
  if (plan !== null && limits?.length === 0) return { kind: "plan", plan, leftOut };
  return { kind: "impossible", limits: limits ?? [], nearest: plan, leftOut };
}

/** Share by which the sums of a solver that proved its answer may be off. */
const ROUNDING = 1e-6;

async function cheapest(question: PlanQuestion, means: PlanMeans, seconds: number): Promise<Found> {
  const until = means.now() + seconds;
  const first = planSearch(question, means, seconds);
  return first.why === null
    ? solvedPlan(question, { kind: "cost" }, means, until - means.now(), first)
    : first;
}

function finished(
  question: PlanQuestion,
  found: Found,
  proven: boolean,
  begun: number,
  { now }: PlanMeans,
): PurchasePlan {
  const plan = costedPlan(question, found.choice);
  const total = plan.costs.totalMinor;
  const bound = Number.isFinite(found.bound) ? Math.min(found.bound, total) : null;
  const gap = bound === null ? null : (total - bound) / Math.max(1, Math.abs(total));
  const reasons = planReasons(question, found.choice);
  const proof = { boundMinor: bound, gap, proven, seconds: now() - begun };
  return {
    ...plan,
    proof,
    from: found.from,
    why: found.why,
    reasons,
    peakLitres: peakLitres(question, plan),
  };
}

/** Least time for naming the limits, also where the plan itself took all: on a busy machine two seconds are not enough. */
const LEAST_SECONDS = 10;

async function limitsOrNone(
  question: PlanQuestion,
  means: PlanMeans,
  left: number,
): Promise<BlockingLimit[] | null> {
  if (means.seconds <= 0) return [];
  const seconds = Math.max(LEAST_SECONDS, left);
  return blockingLimits(question, means.solve, { seconds, gap: RELAXATION_GAP });
}

const RELAXATION_GAP = 1e-4;
