import { spawn } from "node:child_process";
import { constants, setPriority } from "node:os";
import { join } from "node:path";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";

/** A question, and how long and how exactly it is to be answered. */
export type PlanTask = {
  readonly question: PlanQuestion;
  readonly seconds: number;
  /** share of the cost within which a plan counts as proven */
  readonly gap: number;
};

/** A plan that is being worked out; who looks no longer may have it stopped. */
export type PlanWork = { readonly answer: Promise<PlanAnswer>; readonly stop: () => void };

/** Said of a plan that was stopped, as nobody looks at it any more. */
export class PlanStopped extends Error {}

/** A process that says nothing for so long beyond its time is ended. */
const GRACE_SECONDS = 30;

/**
 * Works a purchase plan out in a process of its own, so that the server goes on answering; what a person does comes
 * before it.
 *
 * @param task the question and the time
 * @returns the answer to come; it rejects when the process cannot be started, ends without an answer, is silent too
 *   long, or was stopped (`PlanStopped`)
 */
export function planInProcess(task: PlanTask): PlanWork {
  const root = process.cwd();
  const script = join(/* turbopackIgnore: true */ root, "app", "solver", "run-plan.ts");
  const child = spawn(process.execPath, ["--import", "tsx", script], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit", "ipc"],
    // Limits may be endless, which JSON cannot say.
    serialization: "advanced",
  });
  if (child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL);
  let isStopped = false;
  const answer = new Promise<PlanAnswer>((resolve, reject) => {
    const allowed = task.seconds + GRACE_SECONDS;
    const clock = setTimeout(() => {
      child.kill("SIGKILL");
      reject(new Error(`The purchase plan was not worked out within ${allowed} seconds`));
    }, allowed * 1_000);
    child.once("message", (message) => {
      clearTimeout(clock);
      resolve(message as PlanAnswer);
    });
    child.once("error", (error) => {
      clearTimeout(clock);
      reject(new Error("The purchase plan's process could not be started", { cause: error }));
    });
    child.once("exit", (code) => {
      clearTimeout(clock);
      reject(
        isStopped
          ? new PlanStopped("Nobody looks at this plan any more")
          : new Error(`The purchase plan's process ended with code ${code} before it answered`),
      );
    });
    child.send(task);
  });
  return {
    answer,
    stop: () => {
      isStopped = true;
      child.kill("SIGKILL");
    },
  };
}
