import { type CostedPlan, costedPlan } from "#lib/purchasing/plan/costed-plan";
import { heuristicChoice } from "#lib/purchasing/plan/heuristic-choice";
import type { HeuristicWhy } from "#lib/purchasing/plan/heuristic-why";
import { lacksAvoidably } from "#lib/purchasing/plan/lacks-avoidably";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";
import { planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { searchedChoice } from "#lib/purchasing/plan/searched-choice";
import { type SharedBound, sharedBound } from "#lib/purchasing/plan/shared-bound";

/** The best plan so far, and what is known of it. */
export type Found = {
  readonly choice: PlanChoice;
  /** null where no sound plan was found */
  readonly plan: CostedPlan | null;
  readonly from: "solver" | "heuristic";
  /** null where the plan is the solver's */
  readonly why: HeuristicWhy | null;
  /** no plan costs less, minor units; minus Infinity where nothing is proven */
  readonly bound: number;
  /** whether a plan was found that meets all needs, so that no limit stands in the way */
  readonly isMet: boolean;
};

/** Shares of the time that each takes at most; the search so much only before a solver that is asked. */
const HEURISTIC_SHARE = 0.2;
const MEETING_SHARE = 0.05;
const BOUND_SHARE = 0.35;
const SEARCH_SHARE = 0.2;
/** Left for costing the plan and telling its reasons. */
const LAST_SHARE = 0.04;

/**
 * With more places for an order the solver is not asked. A guess between two sizes that were measured: with some 100
 * places it is done in five seconds, with some 1,000 it bettered neither the bound nor, by much, the plan.
 */
const LARGE_SLOTS = 400;

/**
 * A plan and a bound without the solver: the heuristic's plan, a bound by shared prices, and where the plan is not
 * within the gap of it, a search from that plan. Where that is enough, or the question is too large for the solver,
 * the answer says that the solver is spared.
 *
 * @param question all of the plan
 * @param means time, gap, clock; without time the heuristic alone is asked
 * @param seconds time for all of it, the solver included
 * @returns the plan; why is "no-time" without time, "spared" where the solver need not be asked, else null
 */
export function planSearch(question: PlanQuestion, means: PlanMeans, seconds: number): Found {
  const begun = means.now();
  const gone = () => (means.now() - begun) / seconds;
  const isTimed = means.seconds > 0 && seconds > 0;
  const { supplies, slots } = planParts(question);
  // Without any time the heuristic is all there is, and ends by itself.
  const choice = heuristicChoice(question, supplies, slots, () => isTimed && gone() > HEURISTIC_SHARE);
  const plan = soundPlan(question, choice);
  const bare = { choice, plan, from: "heuristic", why: null, bound: Number.NEGATIVE_INFINITY } as const;
  if (!isTimed) return { ...bare, why: { kind: "no-time" }, isMet: false };
  if (plan === null) return { ...bare, isMet: false };
  const metUntil = gone() + MEETING_SHARE;
  const isMet = !lacksAvoidably(question, plan, supplies) || canMeetAll(question, () => gone() > metUntil);
  const found: Found = { ...bare, isMet };
  const knownMinor = plan.costs.totalMinor;
  const boundUntil = gone() + BOUND_SHARE;
  const isOver = () => gone() > boundUntil;
  const { minor, proof } = sharedBound(question, supplies, { choice, knownMinor, gap: means.gap, isOver });
  const bounded = { ...found, bound: minor };
  if (isNear(knownMinor, minor, means.gap)) return { ...bounded, why: { kind: "spared" } };
  const isLarge = slots.length > LARGE_SLOTS && proof !== null;
  const from = gone();
  // The smaller a question, the sooner the solver is done with it.
  const share = SEARCH_SHARE * Math.min(1, slots.length / LARGE_SLOTS) ** 2;
  const until = isLarge ? 1 - LAST_SHARE : Math.min(1, from + share);
  const searched = searchedChoice(question, supplies, slots, choice, proof, {
    gone: () => (gone() - from) / Math.max(1e-9, until - from),
    enoughMinor: enough(minor, means.gap),
  });
  const better = cheaper(question, bounded, searched);
  const isDone =
    isLarge || isNear(better.plan?.costs.totalMinor ?? Number.POSITIVE_INFINITY, minor, means.gap);
  return isDone ? { ...better, why: { kind: "spared" } } : better;
}

/**
 * Whether no plan is cheaper by more than a share of what a plan costs.
 *
 * @param totalMinor what the plan costs
 * @param bound no plan costs less
 * @param gap share of the plan's cost
 * @returns false where nothing is proven
 */
export function isNear(totalMinor: number, bound: number, gap: number): boolean {
  return totalMinor - bound <= gap * Math.max(1, Math.abs(totalMinor));
}

/** The most that a plan may cost to be near the bound; for costs above 0, else the bound itself. */
const enough = (bound: SharedBound["minor"], gap: number): number =>
  bound > 0 && gap < 1 ? bound / (1 - gap) : bound;

/** Whether the heuristic meets all needs within the limits when to be short is dear; it may only be too weak to. */
function canMeetAll(question: PlanQuestion, isOver: () => boolean): boolean {
  const supplies = question.supplies.map((supply) => ({ ...supply, shortMinor: supply.shortMinor * DEAR }));
  const dear = { ...question, supplies };
  const parts = planParts(dear);
  const plan = soundPlan(question, heuristicChoice(dear, parts.supplies, parts.slots, isOver));
  return plan !== null && !lacksAvoidably(question, plan, parts.supplies);
}

const DEAR = 100;

function soundPlan(question: PlanQuestion, choice: PlanChoice): CostedPlan | null {
  const plan = costedPlan(question, choice);
  return planFaults(question, plan).length === 0 ? plan : null;
}

function cheaper(question: PlanQuestion, found: Found, choice: PlanChoice): Found {
  const plan = soundPlan(question, choice);
  const before = found.plan?.costs.totalMinor ?? Number.POSITIVE_INFINITY;
  return plan === null || plan.costs.totalMinor >= before ? found : { ...found, choice, plan };
}
