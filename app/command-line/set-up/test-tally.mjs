/** @typedef {{ passed: number, failed: number, skipped: number }} Tally */
/**
 * @typedef {{
 *   numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests?: number,
 *   success: boolean, testResults: { status: string, assertionResults: unknown[] }[]
 * }} VitestReport
 */
/** @typedef {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number }, errors: unknown[] }} PlaywrightReport */

/**
 * Counts the tests of a Vitest run. A file that could not even be loaded holds no tests and counts as one failure.
 *
 * @param {VitestReport} report
 * @returns {Tally}
 */
export function vitestTally(report) {
  const unloaded = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + (report.numTodoTests ?? 0),
  };
}

/**
 * Counts the tests of a Playwright run. One that passed only on a second try failed; so did each error outside tests.
 *
 * @param {PlaywrightReport} report
 * @returns {Tally}
 */
export function playwrightTally(report) {
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length, skipped };
}

/**
 * A runner that ended badly without a failed test lost some on the way (a worker that was killed, an error
 * outside every test): that counts as one failure.
 *
 * @param {Tally} tally
 * @param {boolean} endedWell
 * @returns {Tally}
 */
export function heldAgainstEnd(tally, endedWell) {
  return endedWell || tally.failed > 0 ? tally : { ...tally, failed: 1 };
}

/**
 * @param {readonly Tally[]} tallies
 * @returns {Tally}
 */
export function sumTallies(tallies) {
  return tallies.reduce(
    (sum, tally) => ({
      passed: sum.passed + tally.passed,
      failed: sum.failed + tally.failed,
      skipped: sum.skipped + tally.skipped,
    }),
    { passed: 0, failed: 0, skipped: 0 },
  );
}

/**
 * @param {Tally} tally
 * @returns {string} "412 passed, 0 failed"
 */
export function tallyWords({ passed, failed, skipped }) {
  const words = `${passed} passed, ${failed} failed`;
  return skipped === 0 ? words : `${words}, ${skipped} skipped`;
}
