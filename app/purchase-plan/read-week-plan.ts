import type { PlanAim } from "#lib/purchasing/plan/plan-question";
import type { NotPlanned } from "#lib/purchasing/week-plan/week-plan-input";
import { weekPlanQuestion } from "#lib/purchasing/week-plan/week-plan-question";
import type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { type WeeklyCheck, weeklyCheck } from "#lib/replenishment/weekly-check";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import type { Shop } from "#prisma/records/shop";
import { weekPlanInput } from "#prisma/records/week-plan-inputs";
import { checkInputs } from "#prisma/records/weekly-checks";
import { type WantedPlan, wantedPlan } from "./wanted-plan";

/** The weekly check of a day with the purchase plan that follows from it. */
export type WeekWithPlan = {
  readonly check: WeeklyCheck;
  readonly inputs: readonly SupplyOutlookInput[];
  readonly terms: ShopTerms;
  readonly plan: WantedPlan;
  readonly notPlanned: readonly NotPlanned[];
};

/**
 * Reads the weekly check of a day and its purchase plan. A plan that is not worked out yet is begun, not waited for.
 *
 * @param db the database
 * @param shop the shop
 * @param week the day of the check and what the plan is wanted for
 * @returns the check and what is known of the plan
 * @throws Error when the shop was removed meanwhile
 */
export async function readWeekPlan(
  db: Database,
  shop: Shop,
  { today, aim }: { readonly today: Day; readonly aim: PlanAim },
): Promise<WeekWithPlan> {
  const found = await checkInputs(db, today);
  if (found === null) throw new Error("The shop was removed while its weekly check was read");
  const { inputs, terms } = found;
  const check = weeklyCheck(inputs, terms, today);
  const input = await weekPlanInput(db, shop, { today, inputs, terms, check });
  const { question, notPlanned } = weekPlanQuestion(input, aim);
  return { check, inputs, terms, plan: await wantedPlan(db, today, question), notPlanned };
}
