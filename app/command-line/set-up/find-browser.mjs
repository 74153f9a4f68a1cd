import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { progress } from "./progress.mjs";
import { run } from "./run.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
const PLACES = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/**
 * Finds a Chromium or Chrome for the browser tests; installs one where that can be done without asking.
 *
 * @returns {Promise<string>} path of the program
 * @throws {Error} when there is none: the tests are not left out silently
 */
export async function findBrowser() {
  const named = process.env.WADDING_BROWSER;
  if (named !== undefined) {
    if (existsSync(named)) return named;
    throw new Error(`WADDING_BROWSER names ${named}, and there is no such file`);
  }
  const found = systemBrowser() ?? (await playwrightBrowser());
  if (found !== undefined) return found;
  if (canInstall()) {
    await progress("Installing Chromium for the browser tests", async () => {
      await run("apt-get", ["update", "-qq"], { output: "stderr" });
      await run("apt-get", ["install", "-y", "-qq", "chromium"], { output: "stderr" });
    });
    const installed = systemBrowser();
    if (installed !== undefined) return installed;
  }
  throw new Error(
    "The browser tests need Chromium or Chrome and found none. " +
      "Install one, or set WADDING_BROWSER to its path, or run: npx playwright install chromium",
  );
}

/** @returns {string | undefined} */
function systemBrowser() {
  const folders = ["/usr/bin", ...(process.env.PATH ?? "").split(delimiter)];
  const paths = folders.flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...paths, ...PLACES].find((path) => existsSync(path));
}

/** @returns {Promise<string | undefined>} */
async function playwrightBrowser() {
  const { chromium } = await import("@playwright/test");
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}

function canInstall() {
  return process.getuid?.() === 0 && existsSync("/etc/debian_version");
}
