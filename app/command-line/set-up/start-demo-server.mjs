import { spawn } from "node:child_process";
import { join } from "node:path";
import { root } from "./root.mjs";

/** @typedef {{ url: string, stop: () => Promise<void> }} DemoServer */

/**
 * Starts the program as a user does, on a free port, with the demo shop in a database of its own.
 *
 * @param {string} folder a folder to throw away, where the database goes
 * @returns {Promise<DemoServer>} once it answers
 */
export function startDemoServer(folder) {
  const child = spawn(process.execPath, ["app/command-line/start.mjs", "--demo", "--port", "0"], {
    cwd: root,
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, WADDING_DATABASE: join(folder, "demo.db") },
  });
  /** @type {Promise<void>} */
  const ended = new Promise((resolve) => child.once("exit", () => resolve()));
  const stop = async () => {
    child.kill("SIGTERM");
    await ended;
  };
  return new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("exit", (code) =>
      reject(new Error(`The server for the browser tests ended with code ${code}`)),
    );
    let said = "";
    child.stdout.on("data", (/** @type {Buffer} */ chunk) => {
      said += chunk.toString();
      const url = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (url !== undefined) resolve({ url, stop });
    });
  });
}
