import { describe, expect, it } from "vitest";
import { PlanQueue } from "#app/purchase-plan/plan-queue.ts";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";

const question = (weeks: number) => ({ weeks }) as PlanQuestion;
const answer: PlanAnswer = { kind: "impossible", limits: [], nearest: null, leftOut: [] };

/** A queue whose works end when the test says so, with a clock that the test turns. */
function queueOf() {
  const started: { weeks: number; end: (outcome: PlanAnswer | Error) => void; isStopped: boolean }[] = [];
  const settled: [string, PlanAnswer | Error][] = [];
  const clock = { now: 0 };
  const queue = new PlanQueue({
    start: ({ weeks }) => {
      let end: (outcome: PlanAnswer | Error) => void = () => undefined;
      const work = new Promise<PlanAnswer>((resolve, reject) => {
        end = (outcome) => (outcome instanceof Error ? reject(outcome) : resolve(outcome));
      });
      const entry = { weeks, end, isStopped: false };
      started.push(entry);
      return {
        answer: work,
        stop: () => {
          entry.isStopped = true;
          end(new Error("stopped"));
        },
      };
    },
    settle: async (hash, outcome) => {
      settled.push([hash, outcome]);
    },
    now: () => clock.now,
  });
  return { queue, started, settled, clock };
}
const turns = async () => {
  for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
};

describe("the queue of plans", () => {
  it("works one out at a time, and the one asked for last is next", async () => {
    const { queue, started, settled, clock } = queueOf();
    for (const [at, hash] of ["a", "b", "c", "b"].entries()) {
      clock.now = at;
      queue.ask(hash, question(hash.charCodeAt(0)));
    }
    expect(started.map(({ weeks }) => String.fromCharCode(weeks))).toEqual(["a"]);
    started[0]?.end(answer);
    await turns();
    expect(settled).toEqual([["a", answer]]);
    expect(started.map(({ weeks }) => String.fromCharCode(weeks))).toEqual(["a", "b"]);
  });

  it("takes the latest asked, and drops what nobody asked for again", async () => {
    const { queue, started, clock } = queueOf();
    queue.ask("a", question(1));
    queue.ask("old", question(2));
    clock.now = 4_000;
    queue.ask("new", question(3));
    queue.ask("a", question(1));
    clock.now = 6_000;
    started[0]?.end(answer);
    await turns();
    expect(started.map(({ weeks }) => weeks)).toEqual([1, 3]);
    started[1]?.end(answer);
    await turns();
    expect(started).toHaveLength(2);
  });

  it("stops what nobody looks at when another waits, not while it is looked at", () => {
    const { queue, started, clock } = queueOf();
    queue.ask("a", question(1));
    clock.now = 4_000;
    queue.ask("a", question(1));
    clock.now = 8_000;
    queue.ask("b", question(2));
    expect(started[0]?.isStopped).toBe(false);
    clock.now = 9_500;
    queue.ask("b", question(2));
    expect(started[0]?.isStopped).toBe(true);
  });

  it("is asked again by the key alone, as long as the plan waits or is worked out", async () => {
    const { queue, started, clock } = queueOf();
    queue.ask("a", question(1));
    queue.ask("b", question(2));
    clock.now = 4_000;
    expect([queue.askAgain("a"), queue.askAgain("b"), queue.askAgain("c")]).toEqual([true, true, false]);
    clock.now = 8_000;
    started[0]?.end(answer);
    await turns();
    expect(started.map(({ weeks }) => weeks)).toEqual([1, 2]);
    expect(queue.askAgain("a")).toBe(false);
  });

  it("goes on after a failure, and says it", async () => {
    const { queue, started, settled } = queueOf();
    queue.ask("a", question(1));
    queue.ask("b", question(2));
    started[0]?.end(new Error("out of memory"));
    await turns();
    expect(settled[0]?.[1]).toBeInstanceOf(Error);
    expect(started.map(({ weeks }) => weeks)).toEqual([1, 2]);
  });
});
