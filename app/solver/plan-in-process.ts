import { join } from "node:path";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";
import { type ProcessWork, workInProcess } from "./work-in-process";

/** A question, and how long and how exactly it is to be answered. */
export type PlanTask = {
  readonly question: PlanQuestion;
  readonly seconds: number;
  /** share of the cost within which a plan counts as proven */
  readonly gap: number;
};

/** A plan that is being worked out. */
export type PlanWork = ProcessWork<PlanAnswer>;

/**
 * Works a purchase plan out in a process of its own.
 *
 * @param task the question and the time
 * @returns the answer to come; it rejects as that of `workInProcess`
 */
export function planInProcess(task: PlanTask): PlanWork {
  const script = join(/* turbopackIgnore: true */ process.cwd(), "app", "solver", "run-plan.ts");
  return workInProcess({ script, name: "purchase plan", task, seconds: task.seconds, told: () => undefined });
}
