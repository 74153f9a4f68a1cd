import type { Database } from "#prisma/client";
import { type KeptRange, keepRange } from "#prisma/records/carton-ranges";
import type { RangeQuestion } from "./range-question";
import { shopRangeInProcess } from "./shop-range";

/** Questions that this process works on: pressed twice, they are worked out once. */
const KEY = Symbol.for("wadding.carton-ranges");
const held = globalThis as unknown as { [KEY]?: Set<string> };
const working: Set<string> = held[KEY] ?? new Set();
held[KEY] = working;

/**
 * Works the ranges out in a process of its own and keeps each as it comes; who has the screen open sees them appear.
 *
 * @param db the database
 * @param question what is asked
 * @param now the moment, as an instant
 */
export function startRange(db: Database, question: RangeQuestion, now: () => string): void {
  const { hash, task } = question;
  if (working.has(hash)) return;
  working.add(hash);
  let kept: KeptRange = {
    points: [],
    most: task.most,
    today: null,
    earns: [],
    steps: [],
    notProven: [],
    failed: null,
  };
  let saving = Promise.resolve();
  const save = (next: KeptRange): Promise<void> => {
    kept = next;
    saving = saving.then(() => keepRange(db, hash, next, now()));
    return saving;
  };
  const { answer } = shopRangeInProcess(task, (told) => {
    if (told.kind === "today") kept = { ...kept, today: told.today, notProven: told.notProven };
    else {
      void save({
        ...kept,
        points: [...kept.points, told.point],
        earns: [...kept.earns, told.earns],
        steps: [...kept.steps, told.steps],
      }).catch(() => undefined); // `saving` stays rejected until the end, where what failed is told.
    }
  });
  void answer
    .then(() => saving)
    .catch((error: unknown) => {
      saving = Promise.resolve();
      return save({ ...kept, failed: error instanceof Error ? error.message : String(error) });
    })
    .finally(() => working.delete(hash));
}

/** Whether a question is being worked on. */
export function isWorking(hash: string): boolean {
  return working.has(hash);
}
