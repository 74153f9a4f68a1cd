import { spawn } from "node:child_process";
import { root } from "./root.mjs";

/** @type {Record<"show" | "keep" | "stderr", import("node:child_process").StdioOptions>} */
const STREAMS = {
  show: "inherit",
  keep: ["ignore", "pipe", "pipe"],
  stderr: ["inherit", process.stderr, "inherit"],
};

/** A program that was started and ended with an error. */
export class CommandFailed extends Error {
  /**
   * @param {string} command
   * @param {number | null} exitCode
   * @param {string} output what it printed, where that was kept
   */
  constructor(command, exitCode, output) {
    super(`${command} ended with ${exitCode === null ? "a signal" : `code ${exitCode}`}`);
    this.name = "CommandFailed";
    this.exitCode = exitCode;
    this.output = output;
  }
}

/**
 * Runs a program in the project's folder and waits for its end.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ env?: Record<string, string>, output?: "show" | "keep" | "stderr" }} [options] where its output goes:
 *   to the terminal, kept and returned, or all of it to stderr
 * @returns {Promise<string>} the output where it was kept, else ""
 * @throws {CommandFailed} when it does not end with 0
 */
export function run(command, args, options = {}) {
  const { env = {}, output = "show" } = options;
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      stdio: STREAMS[output],
      env: { ...process.env, ...env },
      shell: process.platform === "win32" && command === "npm",
    });
    let kept = "";
    /** @param {Buffer} chunk */
    const keep = (chunk) => {
      kept += chunk.toString();
    };
    child.stdout?.on("data", keep);
    child.stderr?.on("data", keep);
    // Who stops this command stops what it started.
    const stop = () => child.kill("SIGTERM");
    process.once("SIGTERM", stop);
    child.on("error", reject);
    child.on("close", (code) => {
      process.off("SIGTERM", stop);
      if (code === 0) resolve(kept);
      else reject(new CommandFailed([command, ...args].join(" "), code, kept));
    });
  });
}

/**
 * Runs a script of an installed package with this Node.js.
 *
 * @param {string} script path under node_modules
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export function runPackage(script, args, options) {
  return run(process.execPath, [`node_modules/${script}`, ...args], options);
}

/**
 * Runs a TypeScript file of the project.
 *
 * @param {string} file path under the project's folder
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export function runTypeScript(file, args, options) {
  return run(process.execPath, ["--import", "tsx", file, ...args], options);
}
