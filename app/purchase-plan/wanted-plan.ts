import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { keepPlan, planOf } from "#prisma/records/purchase-plans";
import { planInProcess } from "../solver/plan-in-process";
import { WorkStopped } from "../solver/work-in-process";
import { PlanQueue } from "./plan-queue";
import { planSecondsHere } from "./plan-seconds";

/** A plan as far as it is known. */
export type WantedPlan =
  | { readonly kind: "ready"; readonly answer: PlanAnswer; readonly madeAt: string }
  /** it is being worked out; `question` is what to ask for it by */
  | { readonly kind: "working"; readonly question: string }
  | { readonly kind: "failed"; readonly message: string }
  /** no supply can be planned */
  | { readonly kind: "nothing" };

/** Closer to the cheapest than this nobody looks. */
const GAP = 0.005;
/** After a failure the same plan is not tried again for so long. */
const RETRY_MS = 60_000;

type Plans = {
  readonly queue: PlanQueue;
  /** where and for which day a plan is to be kept, by the hash of its question */
  readonly places: Map<string, { readonly db: Database; readonly day: Day }>;
  readonly failed: Map<string, { readonly message: string; readonly at: number }>;
};

// Next keeps a copy of this module for screens and one for routes; what is being worked out is one for both.
const KEY = Symbol.for("wadding.purchase-plans");
const held = globalThis as unknown as { [KEY]?: Plans };
const plans: Plans = held[KEY] ?? newPlans();
held[KEY] = plans;

function newPlans(): Plans {
  const places: Plans["places"] = new Map();
  const failed: Plans["failed"] = new Map();
  const queue = new PlanQueue({
    start: (question) => planInProcess({ question, seconds: planSecondsHere(), gap: GAP }),
    now: Date.now,
    settle: async (hash, outcome) => {
      const place = places.get(hash);
      places.delete(hash);
      if (place === undefined || outcome instanceof WorkStopped) return;
      // Not lost: the screen says it in place of the plan.
      if (outcome instanceof Error) failed.set(hash, { message: outcome.message, at: Date.now() });
      else
        await keepPlan(place.db, { hash, day: place.day, answer: outcome, madeAt: new Date().toISOString() });
    },
  });
  return { queue, places, failed };
}

/**
 * The plan for a question: the kept one, or word that it is being worked out, which this call asks for. It never waits.
 *
 * @param db the database
 * @param day the day that the plan is for
 * @param asked the question, all that the plan depends on, and its hash
 * @returns what is known of the plan now
 */
export async function wantedPlan(
  db: Database,
  day: Day,
  { question, hash }: { readonly question: PlanQuestion; readonly hash: string },
): Promise<WantedPlan> {
  if (question.supplies.length === 0) return { kind: "nothing" };
  const kept = await planOf(db, hash);
  if (kept !== null) return { kind: "ready", ...kept };
  const failed = plans.failed.get(hash);
  if (failed !== undefined && Date.now() - failed.at < RETRY_MS) {
    return { kind: "failed", message: failed.message };
  }
  plans.places.set(hash, { db, day });
  plans.queue.ask(hash, question);
  return { kind: "working", question: hash };
}

/**
 * How far a plan is that was asked for before, by its question's key: a glance, without reckoning the check again.
 *
 * @param db the database
 * @param hash the key that `wantedPlan` gave
 * @returns "working" while it is; else that there is something else to show
 */
export async function planProgress(db: Database, hash: string): Promise<"working" | "settled"> {
  if (!plans.queue.askAgain(hash)) return "settled";
  return (await planOf(db, hash)) === null ? "working" : "settled";
}
