import { spawn } from "node:child_process";
import { root } from "./root.mjs";

/** @typedef {{ url: string, stop: () => Promise<void> }} StartedServer */

/**
 * Starts the program as a user does, on a free port, over a database of its own.
 *
 * @param {string} file the database; made where it is missing
 * @param {readonly string[]} [args] more arguments: "--demo"
 * @returns {Promise<StartedServer>} once it answers
 */
export function startServer(file, args = []) {
  const child = spawn(process.execPath, ["app/command-line/start.mjs", "--port", "0", ...args], {
    cwd: root,
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, WADDING_DATABASE: file },
  });
  /** @type {Promise<void>} */
  const ended = new Promise((resolve) => child.once("exit", () => resolve()));
  const stop = async () => {
    child.kill("SIGTERM");
    await ended;
  };
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("exit", (code) => reject(new Error(`The server ended with code ${code}`)));
    let said = "";
    child.stdout.on("data", (/** @type {Buffer} */ chunk) => {
      said += chunk.toString();
      const url = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (url !== undefined) resolve({ url, stop });
    });
  });
}
