import type { CostedPlan } from "#lib/purchasing/plan/costed-plan";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";

/**
 * Litres at home right after the arrivals of the fullest week.
 *
 * @param question all of the plan
 * @param plan a plan for it
 * @returns litres; what is owed takes none
 */
export function peakLitres(question: PlanQuestion, { stock }: Pick<CostedPlan, "stock">): number {
  const sums = Array.from({ length: question.weeks }, (_, week) =>
    question.supplies.reduce(
      (sum, { litres }, index) => sum + litres * Math.max(0, stock[index]?.after[week] ?? 0),
      0,
    ),
  );
  return Math.max(0, ...sums);
}
