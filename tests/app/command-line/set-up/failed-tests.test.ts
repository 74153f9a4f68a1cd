import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { failedJourneys, failedVitestTests } from "../../../../app/command-line/set-up/failed-tests.mjs";

const file = (path: string) => resolve(import.meta.dirname, "../../../..", path);
const RED = "\u001b[31m";
const PLAIN = "\u001b[39m";

describe("the names of the failed tests", () => {
  it("give file, full name and the first line of the error, and nothing of tests that passed", () => {
    const failed = {
      fullName: "a day is followed by the next",
      status: "failed",
      failureMessages: ["AssertionError: expected 2 to be 3\n    at day.test.ts:9:1"],
    };
    const passed = { fullName: "a day is a day", status: "passed", failureMessages: [] };
    const testResults = [
      { name: file("tests/lib/units/day.test.ts"), status: "failed", assertionResults: [passed, failed] },
      { name: file("tests/lib/units/mass.test.ts"), status: "passed", assertionResults: [passed] },
    ];
    expect(failedVitestTests({ testResults })).toEqual([
      `${join("tests", "lib", "units", "day.test.ts")} › a day is followed by the next: AssertionError: expected 2 to be 3`,
    ]);
  });

  it("name a file that could not be loaded", () => {
    const name = file("tests/lib/broken.test.ts");
    const testResults = [
      { name, status: "failed", message: "Cannot find module\nmore", assertionResults: [] },
    ];
    expect(failedVitestTests({ testResults })).toEqual([
      `${join("tests", "lib", "broken.test.ts")} › could not be loaded: Cannot find module`,
    ]);
  });

  it("of journeys leave out the colours, and count a second try and errors outside all", () => {
    const spec = (title: string, status: string, message: string) => ({
      title,
      file: "pack.spec.ts",
      tests: [{ status, results: [{ errors: [{ message }] }, { errors: [] }] }],
    });
    const inner = {
      title: "packing on a phone",
      file: "pack.spec.ts",
      specs: [spec("is quick", "flaky", "slow\nvery"), spec("is calm", "expected", "")],
    };
    const report = {
      config: { rootDir: file("tests/browser") },
      suites: [
        {
          title: "pack.spec.ts",
          file: "pack.spec.ts",
          specs: [spec("Undo works", "unexpected", `${RED}Error: gone${PLAIN}`)],
          suites: [inner],
        },
      ],
      errors: [{ message: "no browser" }],
    };
    const path = join("tests", "browser", "pack.spec.ts");
    expect(failedJourneys(report)).toEqual([
      `${path} › Undo works: Error: gone`,
      `${path} › packing on a phone is quick: slow`,
      `${join("tests", "browser")} › outside every journey: no browser`,
    ]);
  });

  it("say where no error was given", () => {
    const testResults = [{ name: "a.test.ts", status: "failed", assertionResults: [{ status: "failed" }] }];
    expect(failedVitestTests({ testResults })).toEqual(["a.test.ts › : no error was given"]);
  });
});
