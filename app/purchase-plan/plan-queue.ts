import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";
import type { PlanWork } from "../solver/plan-in-process";

/** What the queue needs from outside. */
export type PlanQueueMeans = {
  readonly start: (question: PlanQuestion) => PlanWork;
  /** keeps an answer, or says why there is none */
  readonly settle: (hash: string, outcome: PlanAnswer | Error) => Promise<void>;
  /** milliseconds */
  readonly now: () => number;
};

type Asked = { readonly question: PlanQuestion; at: number };

/** A plan that nobody asked for again within this time is not waited for any more: screens ask every second. */
const FORGOTTEN_MS = 5_000;

/**
 * Plans one after the other, as each takes a processor and much memory: the one asked for last is next, and what nobody
 * looks at any more is dropped, also while it is being worked out if another waits. Every record changes the question,
 * so that old ones would pile up.
 */
export class PlanQueue {
  readonly #means: PlanQueueMeans;
  readonly #waiting = new Map<string, Asked>();
  #running: { readonly hash: string; readonly work: PlanWork; at: number } | null = null;

  constructor(means: PlanQueueMeans) {
    this.#means = means;
  }

  /** Asks for a plan, again or for the first time. */
  ask(hash: string, question: PlanQuestion): void {
    const at = this.#means.now();
    if (this.#running?.hash === hash) {
      this.#running.at = at;
      return;
    }
    this.#waiting.set(hash, { question, at });
    if (this.#running === null) this.#next();
    else if (at - this.#running.at > FORGOTTEN_MS) this.#running.work.stop();
  }

  /** Asks again for a plan by its key; false where it neither waits nor is being worked out. */
  askAgain(hash: string): boolean {
    const waiting = this.#waiting.get(hash);
    if (waiting !== undefined) {
      this.ask(hash, waiting.question);
      return true;
    }
    if (this.#running?.hash !== hash) return false;
    this.#running.at = this.#means.now();
    return true;
  }

  async #finished(hash: string, work: PlanWork): Promise<void> {
    try {
      await this.#means.settle(hash, await outcomeOf(work));
    } finally {
      this.#running = null;
      this.#next();
    }
  }

  #next(): void {
    const now = this.#means.now();
    for (const [hash, { at }] of this.#waiting) if (now - at > FORGOTTEN_MS) this.#waiting.delete(hash);
    const [latest] = [...this.#waiting].toSorted(([, a], [, b]) => b.at - a.at);
    if (latest === undefined) return;
    const [hash, { question, at }] = latest;
    this.#waiting.delete(hash);
    const work = this.#means.start(question);
    this.#running = { hash, work, at };
    void this.#finished(hash, work);
  }
}

/** The answer, or what went wrong as a value. */
async function outcomeOf(work: PlanWork): Promise<PlanAnswer | Error> {
  try {
    return await work.answer;
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error));
  }
}
