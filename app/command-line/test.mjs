import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { command } from "./set-up/command.mjs";
import { findBrowser } from "./set-up/find-browser.mjs";
import { nextBuild } from "./set-up/next-build.mjs";
import { CommandFailed, runPackage } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";
import { startServer } from "./set-up/start-server.mjs";
import {
  heldAgainstEnd,
  playwrightTally,
  sumTallies,
  tallyWords,
  vitestTally,
} from "./set-up/test-tally.mjs";

/** The last and the first place on earth where a day begins: what depends on the clock's zone shows in one of them. */
const EARLIEST_DAY = "Pacific/Kiritimati";
const LATEST_DAY = "Pacific/Pago_Pago";

/** @typedef {import("./set-up/test-tally.mjs").Tally} Tally */

/** Pure numbers: no time zone reaches them. */
const withoutDays = ["tests/lib/statistics/**", "tests/lib/forecast/methods/**"].flatMap((glob) => [
  "--exclude",
  glob,
]);

await command(async () => {
  await setUp();
  const browser = await findBrowser();
  await nextBuild();
  const folder = mkdtempSync(join(tmpdir(), "wadding-test-"));
  try {
    const tallies = [
      await unitTests(join(folder, "all.json"), EARLIEST_DAY, ["--exclude", "tests/architecture.test.ts"]),
      await unitTests(join(folder, "lib.json"), LATEST_DAY, ["tests/lib", ...withoutDays]),
      await browserTests(folder, browser),
    ];
    const tally = sumTallies(tallies);
    console.log(tallyWords(tally));
    if (tally.failed > 0 || tally.passed === 0) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

/**
 * @param {string} report file for the runner's JSON
 * @param {string} timeZone
 * @param {readonly string[]} args
 * @returns {Promise<Tally>}
 */
async function unitTests(report, timeZone, args) {
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const ended = await toItsEnd(() =>
    runPackage("vitest/vitest.mjs", ["run", ...reporters, ...args], { env: { TZ: timeZone } }),
  );
  return heldAgainstEnd(vitestTally(readReport(report)), ended);
}

/**
 * @param {string} folder
 * @param {string} browser
 * @returns {Promise<Tally>}
 */
async function browserTests(folder, browser) {
  const report = join(folder, "browser.json");
  let ended = false;
  const server = await startServer(join(folder, "demo.db"), ["--demo"]);
  try {
    ended = await toItsEnd(() =>
      runPackage("@playwright/test/cli.js", ["test"], {
        env: { WADDING_BASE_URL: server.url, WADDING_BROWSER: browser, WADDING_TEST_REPORT: report },
      }),
    );
  } finally {
    await server.stop();
  }
  return heldAgainstEnd(playwrightTally(readReport(report)), ended);
}

/**
 * A runner with failed tests ends with an error; its report says which, so the other runners still get their turn.
 *
 * @param {() => Promise<string>} runner
 * @returns {Promise<boolean>} whether the runner itself ended well
 */
async function toItsEnd(runner) {
  try {
    await runner();
    return true;
  } catch (error) {
    if (!(error instanceof CommandFailed)) throw error;
    return false;
  }
}

/** @param {string} file */
function readReport(file) {
  if (!existsSync(file))
    throw new Error("A test runner stopped before it wrote its report; its own words are above");
  return JSON.parse(readFileSync(file, "utf8"));
}
