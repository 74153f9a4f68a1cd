import { isAbsolute, join, relative } from "node:path";
import { stripVTControlCharacters } from "node:util";
import { root } from "./root.mjs";

/**
 * @typedef {{
 *   name: string, status: string, message?: string,
 *   assertionResults: { fullName?: string, status?: string, failureMessages?: string[] }[]
 * }} VitestFile
 */
/** @typedef {{ message?: string }} PlaywrightError */
/**
 * @typedef {{
 *   title: string, file: string,
 *   tests: { status: string, results: { errors: PlaywrightError[] }[] }[]
 * }} PlaywrightSpec
 */
/** @typedef {{ title: string, file?: string, specs: PlaywrightSpec[], suites?: PlaywrightSuite[] }} PlaywrightSuite */

/**
 * Names the failed tests of a Vitest run, and the files that could not even be loaded.
 *
 * @param {{ testResults: VitestFile[] }} report
 * @returns {string[]} a line each: file, full name, first line of the error
 */
export function failedVitestTests({ testResults }) {
  return testResults.flatMap((file) => {
    const path = fromRoot(file.name);
    if (file.status === "failed" && file.assertionResults.length === 0)
      return [line(path, "could not be loaded", file.message)];
    return file.assertionResults
      .filter((test) => test.status === "failed")
      .map((test) => line(path, test.fullName ?? "", test.failureMessages?.[0]));
  });
}

/**
 * Names the failed journeys of a Playwright run, those that passed only on a second try, and errors outside them.
 *
 * @param {{ config: { rootDir: string }, suites: PlaywrightSuite[], errors: PlaywrightError[] }} report
 * @returns {string[]} a line each: file, full name, first line of the error
 */
export function failedJourneys({ config, suites, errors }) {
  const outside = errors.map(({ message }) =>
    line(fromRoot(config.rootDir), "outside every journey", message),
  );
  return [...suites.flatMap((suite) => failedIn(suite, [], config.rootDir)), ...outside];
}

/**
 * @param {PlaywrightSuite} suite
 * @param {readonly string[]} above titles of the suites around it
 * @param {string} folder
 * @returns {string[]}
 */
function failedIn(suite, above, folder) {
  // The outermost suite is the file itself.
  const titles = suite.title === suite.file ? above : [...above, suite.title];
  const own = suite.specs.flatMap((spec) =>
    spec.tests
      .filter(({ status }) => status === "unexpected" || status === "flaky")
      .map(({ results }) => {
        const error = results.flatMap(({ errors }) => errors)[0];
        return line(fromRoot(join(folder, spec.file)), [...titles, spec.title].join(" "), error?.message);
      }),
  );
  return [...own, ...(suite.suites ?? []).flatMap((inner) => failedIn(inner, titles, folder))];
}

/** @param {string} path */
function fromRoot(path) {
  return isAbsolute(path) ? relative(root, path) : path;
}

/**
 * @param {string} file
 * @param {string} name
 * @param {string} [error]
 */
function line(file, name, error = "") {
  const words = stripVTControlCharacters(error).trim().split("\n")[0] ?? "";
  return `${file} › ${name}: ${words === "" ? "no error was given" : words}`;
}
