import { defineConfig } from "@playwright/test";
import { BROWSER_FLAGS } from "./tests/browser/browser-flags.mjs";

// `npm test` starts the program, finds a browser and says both here.
const {
  WADDING_BASE_URL: baseURL,
  WADDING_BROWSER: executablePath,
  WADDING_TEST_REPORT: report,
} = process.env;

// Specs that write nothing into the shop, or have a shop of their own: they run beside the journeys.
const BESIDE = [
  "accessibility",
  "phone-screens",
  "first-run",
  "typed-early",
  "trial",
  "outbox",
  "house",
  "learned-recipe",
  "reality",
].map((name) => `**/${name}.spec.ts`);

export default defineConfig({
  testDir: "tests/browser",
  outputDir: "test-results",
  workers: 2,
  // All journeys share one shop: they run one after another.
  projects: [
    { name: "journeys", testIgnore: BESIDE, workers: 1 },
    { name: "beside", testMatch: BESIDE, workers: 1 },
  ],
  fullyParallel: false,
  forbidOnly: true,
  retries: 0,
  timeout: 60_000,
  reporter: report === undefined ? "list" : [["list"], ["json", { outputFile: report }]],
  use: {
    ...(baseURL !== undefined && { baseURL }),
    browserName: "chromium",
    locale: "en-US",
    screenshot: "only-on-failure",
    launchOptions: {
      ...(executablePath !== undefined && { executablePath }),
      args: BROWSER_FLAGS,
    },
  },
});
