import { modelText } from "#lib/optimisation/model-text";
import type { SolverAnswer } from "#lib/optimisation/solve";
import { type CostedPlan, costedPlan } from "#lib/purchasing/plan/costed-plan";
import type { HeuristicWhy } from "#lib/purchasing/plan/heuristic-why";
import type { ModelGoal } from "#lib/purchasing/plan/model-columns";
import { peakLitres } from "#lib/purchasing/plan/peak-litres";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";
import { type PlanModel, planModel } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { Found } from "#lib/purchasing/plan/plan-search";
import { choiceOfValues, planStart } from "#lib/purchasing/plan/plan-start";

/**
 * The better of a known plan and the solver's, by the goal; the better of both bounds.
 *
 * @param question all of the plan
 * @param goal the least cost, or the least room
 * @param means solver, gap, clock
 * @param seconds time for it
 * @param first what is known; without a sound plan the solver begins from nothing
 * @returns what is known then; why says what became of the solver's plan where it is not taken
 */
export async function solvedPlan(
  question: PlanQuestion,
  goal: ModelGoal,
  means: PlanMeans,
  seconds: number,
  first: Found,
): Promise<Found> {
  const until = means.now() + seconds;
  const model = planModel(question, goal);
  const time = until - means.now();
  const isCost = goal.kind === "cost";
  if (time <= 0) return isCost ? { ...first, why: { kind: "no-time" } } : first;
  const outcome = await solved(model, means, time, first.plan === null ? null : first.choice);
  if (outcome.kind === "failed") return isCost ? { ...first, why: outcome } : first;
  return bettered(question, goal, model, first, outcome.answer);
}

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
  const kept = isCost ? { ...first, bound: Math.max(answer.bound, first.bound) } : first;
  if (answer.values === null) {
    const why: HeuristicWhy =
      answer.kind === "stopped" ? { kind: "stopped" } : { kind: "unsound", faults: [] };
    return isCost ? { ...kept, why } : first;
  }
  const choice = choiceOfValues(model, answer.values);
  const plan = costedPlan(question, choice);
  const faults = planFaults(question, plan);
  // A solver that breaks a rule is not believed in its bound either.
  if (faults.length > 0) return isCost ? { ...first, why: { kind: "unsound", faults } } : first;
  const measure = isCost
    ? (of: CostedPlan) => of.costs.totalMinor
    : (of: CostedPlan) => peakLitres(question, of);
  const isBetter = first.plan === null || measure(plan) <= measure(first.plan) + 1e-6;
  if (isBetter) return { ...kept, choice, plan, from: "solver", why: null };
  return isCost ? { ...kept, why: { kind: "stopped" } } : first;
}
