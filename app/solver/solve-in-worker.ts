import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Solve, SolveOptions, SolverAnswer } from "#lib/optimisation/solve";

/** What the thread sends: that it is ready, an answer, or why there is none. */
type Message = { readonly ready: true } | { readonly answer: SolverAnswer } | { readonly error: string };

/** After so many seconds beyond the limit a thread that still solves is ended. */
const GRACE_SECONDS = 20;

let thread: Promise<Worker> | null = null;
let last: Promise<unknown> = Promise.resolve();

/**
 * Solves a model in a thread of its own, so that the server goes on answering. One model at a time, in the order
 * of the calls; the thread is kept for the next one, and started again when it ended.
 *
 * @param modelText a model in LP format
 * @param options time limit, gap, an answer to begin with
 * @returns what was found
 * @throws Error when the thread cannot be started, ends while it solves, or the solver fails
 */
export const solveInWorker: Solve = (modelText, options) => {
  const answer = last.then(() => solveNow(modelText, options));
  last = answer.catch(() => undefined);
  return answer;
};

/** Ends the thread once what was asked is answered; the next call starts a new one. */
export async function endSolver(): Promise<void> {
  await last;
  const ending = thread;
  thread = null;
  if (ending !== null) await (await ending).terminate();
}

async function solveNow(modelText: string, options: SolveOptions): Promise<SolverAnswer> {
  thread ??= startedThread();
  const worker = await thread;
  worker.ref();
  try {
    const message = await reply(worker, options.seconds + GRACE_SECONDS, () => {
      worker.postMessage({ modelText, ...options });
    });
    if ("answer" in message) return message.answer;
    throw new Error("error" in message ? `The solver failed: ${message.error}` : "The solver gave no answer");
  } finally {
    // A server or a command may end while the thread waits for more.
    worker.unref();
  }
}

function startedThread(): Promise<Worker> {
  const file = join(/* turbopackIgnore: true */ process.cwd(), "app", "solver", "highs-worker.mjs");
  const worker = new Worker(file);
  worker.on("exit", () => {
    thread = null;
  });
  return reply(worker, GRACE_SECONDS, () => undefined).then(
    () => worker,
    (error: unknown) => {
      thread = null;
      throw new Error(`The solver could not be started from ${file}`, { cause: error });
    },
  );
}

/** The next message of the thread; rejects when it fails, ends or stays silent too long. */
function reply(worker: Worker, seconds: number, ask: () => void): Promise<Message> {
  return new Promise((resolve, reject) => {
    const clock = setTimeout(() => {
      // Ended, it sends "exit" too; the next call starts a new thread.
      void worker.terminate();
      settle(() => reject(new Error(`The solver did not answer within ${seconds} seconds`)));
    }, seconds * 1000);
    const onMessage = (message: Message) => settle(() => resolve(message));
    const onError = (error: unknown) => settle(() => reject(error));
    const onExit = (code: number) => settle(() => reject(new Error(`The solver ended with code ${code}`)));
    const settle = (end: () => void) => {
      clearTimeout(clock);
      worker.off("message", onMessage).off("error", onError).off("exit", onExit);
      end();
    };
    worker.on("message", onMessage).on("error", onError).on("exit", onExit);
    ask();
  });
}
