import { spawn } from "node:child_process";
import { constants, setPriority } from "node:os";

/** Work that is being done; who looks no longer may have it stopped. */
export type ProcessWork<Answer> = { readonly answer: Promise<Answer>; readonly stop: () => void };

/** What a script is started for. */
export type ProcessTask<Told> = {
  /** path of the script: it gets the task as a message, sends messages back and ends */
  readonly script: string;
  /** what it works out, as in "purchase plan" */
  readonly name: string;
  readonly task: unknown;
  /** time that the script was given */
  readonly seconds: number;
  /** called with what it tells on the way */
  readonly told: (told: Told) => void;
};

/** A message of a script: something on the way, or its answer. */
export type ProcessMessage<Answer, Told> = { readonly told: Told } | { readonly answer: Answer };

/** Said of work that was stopped, as nobody looks at it any more. */
export class WorkStopped extends Error {}

/** A process that says nothing for so long beyond its time is ended. */
const GRACE_SECONDS = 30;

/**
 * Does work in a process of its own, so that the server goes on answering; what a person does comes before it.
 *
 * @param work script, task and time
 * @returns the answer to come; it rejects when the process cannot be started, ends without an answer, is silent too
 *   long, or was stopped (`WorkStopped`)
 */
export function workInProcess<Answer, Told>(work: ProcessTask<Told>): ProcessWork<Answer> {
  const child = spawn(process.execPath, ["--import", "tsx", work.script], {
    cwd: process.cwd(),
    stdio: ["ignore", "ignore", "inherit", "ipc"],
    // Numbers may be endless, which JSON cannot say.
    serialization: "advanced",
  });
  if (child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL);
  let isStopped = false;
  const answer = new Promise<Answer>((resolve, reject) => {
    const allowed = work.seconds + GRACE_SECONDS;
    const clock = setTimeout(() => {
      child.kill("SIGKILL");
      reject(new Error(`The ${work.name} was not worked out within ${allowed} seconds`));
    }, allowed * 1_000);
    child.on("message", (message) => {
      const said = message as ProcessMessage<Answer, Told>;
      if ("told" in said) return work.told(said.told);
      clearTimeout(clock);
      resolve(said.answer);
    });
    child.once("error", (error) => {
      clearTimeout(clock);
      reject(new Error(`The ${work.name}'s process could not be started`, { cause: error }));
    });
    child.once("exit", (code) => {
      clearTimeout(clock);
      reject(
        isStopped
          ? new WorkStopped(`Nobody looks at this ${work.name} any more`)
          : new Error(`The ${work.name}'s process ended with code ${code} before it answered`),
      );
    });
    child.send(work.task as object);
  });
  return {
    answer,
    stop: () => {
      isStopped = true;
      child.kill("SIGKILL");
    },
  };
}
