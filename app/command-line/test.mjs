import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { command } from "./set-up/command.mjs";
import { failedJourneys, failedVitestTests } from "./set-up/failed-tests.mjs";
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

/** @typedef {{ tally: import("./set-up/test-tally.mjs").Tally, failed: string[] }} Outcome failed: a line for each */

/** Pure numbers: no time zone reaches them. */
const withoutDays = ["tests/lib/statistics/**", "tests/lib/forecast/methods/**"].flatMap((glob) => [
  "--exclude",
  glob,
]);

/** Journeys record much, and each record makes a new plan: rough ones leave the processor to the browser. */
const PLAN_SECONDS = "1";

await command(async () => {
  process.env.WADDING_PLAN_SECONDS ??= PLAN_SECONDS;
  await setUp();
  const browser = await findBrowser();
  await nextBuild();
  const folder = mkdtempSync(join(tmpdir(), "wadding-test-"));
  try {
    const outcomes = [
      await unitTests(join(folder, "all.json"), EARLIEST_DAY, ["--exclude", "tests/architecture.test.ts"]),
      await unitTests(join(folder, "lib.json"), LATEST_DAY, ["tests/lib", ...withoutDays]),
      await browserTests(folder, browser),
    ];
    const tally = sumTallies(outcomes.map((outcome) => outcome.tally));
    const failed = outcomes.flatMap((outcome) => outcome.failed);
    if (failed.length > 0) console.log(`Failed:\n${failed.join("\n")}`);
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
 * @returns {Promise<Outcome>}
 */
async function unitTests(report, timeZone, args) {
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const ended = await toItsEnd(() =>
    runPackage("vitest/vitest.mjs", ["run", ...reporters, ...args], { env: { TZ: timeZone } }),
  );
  const read = readReport(report);
  return outcomeOf(vitestTally(read), failedVitestTests(read), ended, `unit tests in ${timeZone}`);
}

/**
 * @param {string} folder
 * @param {string} browser
 * @returns {Promise<Outcome>}
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
  const read = readReport(report);
  return outcomeOf(playwrightTally(read), failedJourneys(read), ended, "browser journeys");
}

/**
 * @param {import("./set-up/test-tally.mjs").Tally} counted
 * @param {string[]} named
 * @param {boolean} ended whether the runner itself ended well
 * @param {string} runner
 * @returns {Outcome}
 */
function outcomeOf(counted, named, ended, runner) {
  const tally = heldAgainstEnd(counted, ended);
  const lost = `${runner}: the runner ended badly without a failed test; its own words are above`;
  return {
    tally,
    failed: tally.failed > counted.failed ? [lost] : named.map((line) => `${runner}: ${line}`),
  };
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
