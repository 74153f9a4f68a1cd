import type { CostedPlan } from "#lib/purchasing/plan/costed-plan";
import type { ModelSupply } from "#lib/purchasing/plan/model-columns";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { unavoidable } from "#lib/purchasing/plan/stock-rows";

/**
 * Whether something is owed, or below the wanted stock where that must be kept, that an order could have met.
 *
 * @param question all of the plan
 * @param plan a plan for it
 * @param supplies supplies with their slots
 * @returns true where a limit, or the cost, keeps a need from being met
 */
export function lacksAvoidably(
  question: PlanQuestion,
  plan: CostedPlan,
  supplies: readonly Pick<ModelSupply, "supply" | "reach" | "slots">[],
): boolean {
  return plan.shortages.some(({ supplyId, week, owed, missing }) => {
    const of = supplies.find(({ supply }) => supply.id === supplyId);
    if (of === undefined) return false;
    if (owed > unavoidable(of, week) + NEARLY_NOTHING) return true;
    const wanted = of.supply.wanted[week] ?? 0;
    return question.keepsWanted === true && missing > unavoidable(of, week, wanted) + NEARLY_NOTHING;
  });
}

const NEARLY_NOTHING = 1e-6;
