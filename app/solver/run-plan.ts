import { type PlanAnswer, purchasePlan } from "#lib/purchasing/plan/purchase-plan";
import type { PlanTask } from "./plan-in-process";
import { solveInWorker } from "./solve-in-worker";
import type { ProcessMessage } from "./work-in-process";

/**
 * The plan's own process, so that the server stays free to answer: it gets one question through its channel, sends the
 * answer back and ends.
 */
process.once("disconnect", () => process.exit(1));
process.once("message", (task: PlanTask) => {
  void answered(task);
});

async function answered({ question, seconds, gap }: PlanTask): Promise<void> {
  const now = () => performance.now() / 1_000;
  const answer = await purchasePlan(question, { solve: solveInWorker, seconds, gap, now });
  const message: ProcessMessage<PlanAnswer, never> = { answer };
  process.send?.(message, () => process.exit(0));
}
