import type { PlanAim, PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { NotPlanned } from "#lib/purchasing/week-plan/week-plan-input";
import { weekPlanQuestion } from "#lib/purchasing/week-plan/week-plan-question";
import type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { type WeeklyCheck, weeklyCheck } from "#lib/replenishment/weekly-check";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { questionHash } from "#prisma/records/purchase-plans";
import { rememberedUntilWritten } from "#prisma/records/remembered";
import { shopOf } from "#prisma/records/shop";
import { weekPlanInput } from "#prisma/records/week-plan-inputs";
import { checkInputs } from "#prisma/records/weekly-checks";
import { type WantedPlan, wantedPlan } from "./wanted-plan";

/** The weekly check of a day with the purchase plan that follows from it. */
export type WeekWithPlan = Omit<WeekQuestion, "question" | "hash"> & { readonly plan: WantedPlan };

/** All of it that depends on what is recorded alone, with the question that the plan answers and its key. */
type WeekQuestion = {
  readonly check: WeeklyCheck;
  readonly inputs: readonly SupplyOutlookInput[];
  readonly terms: ShopTerms;
  readonly notPlanned: readonly NotPlanned[];
  readonly question: PlanQuestion;
  readonly hash: string;
};

type Week = { readonly today: Day; readonly aim: PlanAim };

/**
 * Reads the weekly check of a day and its purchase plan. A plan that is not worked out yet is begun, not waited for.
 *
 * @param db the database
 * @param week the day of the check and what the plan is wanted for
 * @returns the check and what is known of the plan
 * @throws Error when the shop was removed meanwhile
 */
export async function readWeekPlan(db: Database, week: Week): Promise<WeekWithPlan> {
  const key = JSON.stringify(["week", week.today, week.aim]);
  const { question, hash, ...said } = await rememberedUntilWritten(db, key, () => weekQuestion(db, week));
  return { ...said, plan: await wantedPlan(db, week.today, { question, hash }) };
}

async function weekQuestion(db: Database, { today, aim }: Week): Promise<WeekQuestion> {
  const [shop, found] = await Promise.all([shopOf(db), checkInputs(db, today)]);
  if (shop === null || found === null) {
    throw new Error("The shop was removed while its weekly check was read");
  }
  const { inputs, terms } = found;
  const check = weeklyCheck(inputs, terms, today);
  const input = await weekPlanInput(db, shop, { today, inputs, terms, check });
  const { question, notPlanned } = weekPlanQuestion(input, aim);
  return { check, inputs, terms, question, notPlanned, hash: questionHash(question) };
}
