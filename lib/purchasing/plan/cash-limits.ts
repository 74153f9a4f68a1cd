import type { CashLimit } from "#lib/purchasing/plan/plan-limits";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";

/**
 * All cash limits of a question, the one for this week's orders that its aim sets among them.
 *
 * @param question all of the plan
 * @returns limits
 */
export function cashLimits({ limits, aim }: PlanQuestion): readonly CashLimit[] {
  return aim.kind === "within" ? [...limits.cash, { throughWeek: 0, minor: aim.minor }] : limits.cash;
}
