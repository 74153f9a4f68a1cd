import { CommandFailed } from "./run.mjs";

/**
 * Runs a command of the project to its end. What goes wrong is said in one line, and the exit code tells it.
 * A program that failed has said why itself.
 *
 * @param {() => Promise<void>} work
 */
export async function command(work) {
  try {
    await work();
  } catch (error) {
    if (process.env.WADDING_TRACE !== undefined) console.error(error);
    else console.error(error instanceof Error ? error.message : String(error));
    process.exitCode = error instanceof CommandFailed && error.exitCode !== null ? error.exitCode : 1;
  }
}
