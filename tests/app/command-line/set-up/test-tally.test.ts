import { describe, expect, it } from "vitest";
import {
  heldAgainstEnd,
  playwrightTally,
  sumTallies,
  tallyWords,
  vitestTally,
} from "../../../../app/command-line/set-up/test-tally.mjs";

describe("the tally of the tests", () => {
  it("counts a test file that could not be loaded as a failure", () => {
    const report = {
      numPassedTests: 3,
      numFailedTests: 1,
      numPendingTests: 0,
      success: false,
      testResults: [
        { status: "failed", assertionResults: [] },
        { status: "failed", assertionResults: [{}] },
        { status: "passed", assertionResults: [{}, {}, {}] },
      ],
    };
    expect(vitestTally(report)).toEqual({ passed: 3, failed: 2, skipped: 0 });
  });

  it("counts a journey that passed only on a second try, and an error outside the journeys, as failures", () => {
    const report = { stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 0 }, errors: [{}] };
    expect(playwrightTally(report)).toEqual({ passed: 5, failed: 3, skipped: 0 });
  });

  it("counts a runner that ended badly without a failed test as a failure", () => {
    expect(heldAgainstEnd({ passed: 9, failed: 0, skipped: 0 }, false).failed).toBe(1);
    expect(heldAgainstEnd({ passed: 9, failed: 2, skipped: 0 }, false).failed).toBe(2);
    expect(heldAgainstEnd({ passed: 9, failed: 0, skipped: 0 }, true).failed).toBe(0);
  });

  it("adds up and is said in one line", () => {
    const sum = sumTallies([
      { passed: 3, failed: 0, skipped: 0 },
      { passed: 4, failed: 1, skipped: 0 },
    ]);
    expect(tallyWords(sum)).toBe("7 passed, 1 failed");
  });

  it("does not hide tests that were skipped", () => {
    expect(tallyWords({ passed: 1, failed: 0, skipped: 2 })).toBe("1 passed, 0 failed, 2 skipped");
  });
});
