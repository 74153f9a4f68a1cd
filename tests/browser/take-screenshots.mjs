import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { findBrowser } from "../../app/command-line/set-up/find-browser.mjs";
import { BROWSER_FLAGS } from "./browser-flags.mjs";

// Pictures of every screen of a running shop, for looking at:
// BASE_URL=http://127.0.0.1:3000 OUT=pictures node tests/browser/take-screenshots.mjs [address …]

const { BASE_URL: baseURL, OUT: folder } = process.env;
if (!baseURL || !folder) throw new RangeError("take-screenshots requires BASE_URL and OUT, got none");

const SCREENS = [
  "/",
  "/pack",
  "/parcels",
  "/supplies",
  "/supplies/count",
  "/recipes",
  "/outlook",
  "/outlook/supplies/packing-paper",
  "/buying",
  "/buying/demo-order-part",
  "/buying/demo-order-part/receive",
  "/buying/demo-order-draft",
  "/buying/demo-order-draft/sheet",
  "/setup/import",
  "/setup",
  "/nothing",
];
const SIZES = [
  { width: 390, height: 844 },
  { width: 1280, height: 900 },
];
const asked = process.argv.slice(2);
const addresses = asked.length > 0 ? asked : SCREENS;

mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: BROWSER_FLAGS,
});
for (const size of SIZES) {
  for (const colorScheme of /** @type {const} */ (["light", "dark"])) {
    const context = await browser.newContext({
      baseURL,
      viewport: size,
      colorScheme,
      reducedMotion: "reduce",
    });
    const page = await context.newPage();
    for (const address of addresses) {
      await page.goto(address, { waitUntil: "networkidle" });
      const name = address.replaceAll(/\W+/g, "-").replaceAll(/^-|-$/g, "") || "this-week";
      const path = join(folder, `${name}-${size.width}-${colorScheme}.png`);
      await page.screenshot({ path, fullPage: true });
      process.stdout.write(`${path}\n`);
    }
    await context.close();
  }
}
await browser.close();
