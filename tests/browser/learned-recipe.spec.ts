import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect as expectSoon, type Page, test } from "@playwright/test";
import { runTypeScript } from "../../app/command-line/set-up/run.mjs";
import { startServer } from "../../app/command-line/set-up/start-server.mjs";

// A shop of its own in each test: its card says 11 sheets for a mug, its counts 13 (tests/browser/counted-mugs.ts).
const expect = expectSoon.configure({ timeout: 30_000 });
const DAY_MS = 86_400_000;
const DAYS_AGO = 56;
/** 1000 sheets less 13 for each of 42 mugs. */
const PILE = "454";
const TITLE = "Mug on paper: about 13 sheets of Packing paper, the card says 11 sheets";

let folder = "";
let server: Awaited<ReturnType<typeof startServer>>;

test.describe.configure({ timeout: 120_000 });

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "wadding-learned-"));
  const file = join(folder, "shop.db");
  const firstCount = new Date(Date.now() - DAYS_AGO * DAY_MS).toISOString().slice(0, 10);
  await runTypeScript("tests/browser/counted-mugs.ts", [file, firstCount]);
  server = await startServer(file);
});

test.afterEach(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

test("after a check This week says that a card is off; a yes changes it from today, and nothing before", async ({
  browser,
}) => {
  const page = await browser.newPage({ baseURL: server.url });
  await expectSheetsAtBench(page, "11 sheets");
  await page.goto("/supplies/count");
  const line = page.getByRole("listitem").filter({ hasText: "Packing paper" });
  await line.getByLabel("On the shelf").fill(PILE);
  await line.getByRole("button", { name: "Save" }).click();
  await expect(line.getByRole("status")).toContainText("454 sheets counted");
  await page.goto("/");
  await expect(page.getByRole("heading", { name: "The counts say that a card is off" })).toBeVisible();
  await expect(page.getByText(`${TITLE}.`)).toBeVisible();
  await page.getByRole("link", { name: "See why, and answer" }).click();
  await expect(page.getByText(/From 7 counts; 9 times in 10 the real use is/)).toBeVisible();
  await answer(page, "Change from today");
  await expect(
    page.getByText(/Mug on paper says 13 sheets of Packing paper instead of 11 sheets since/).first(),
  ).toBeVisible();
  await expect(page.getByText("Parcels packed before keep their amounts").first()).toBeVisible();

  await expectSheetsAtBench(page, "13 sheets");
  await page.goto("/parcels");
  await page.getByRole("link", { name: "Mug" }).first().click();
  await expect(page.getByRole("row").filter({ hasText: "Packing paper" }).first()).toContainText("11 sheets");
  await page.goto("/recipes/mug/changes");
  await expect(page.getByText(/13 sheets/).first()).toBeVisible();
  await page.goto("/");
  await expect(page.getByRole("heading", { name: "The counts say that a card is off" })).toHaveCount(0);
});

test("later leaves the card, and waits for the next count", async ({ browser }) => {
  const page = await browser.newPage({ baseURL: server.url });
  await page.goto("/recipes/reality");
  await answer(page, "Later");
  await expect(
    page.getByText(/“Later” on .* to about 13 sheets of Packing paper instead of 11 sheets/).first(),
  ).toBeVisible();
  await expect(page.getByRole("form", { name: TITLE })).toHaveCount(0);
  await expect(page.getByText(/Asked again after 1 more count of Packing paper/).first()).toBeVisible();
  await expectSheetsAtBench(page, "11 sheets");
});

test("a no leaves the card, and says after how many counts it is asked again", async ({ browser }) => {
  const page = await browser.newPage({ baseURL: server.url });
  await page.goto("/recipes/reality");
  await answer(page, "No, the card is right");
  await expect(page.getByText(/Asked again after 4 more counts of Packing paper/).first()).toBeVisible();
  await expect(page.getByRole("form", { name: TITLE })).toHaveCount(0);
  await expectSheetsAtBench(page, "11 sheets");
});

async function answer(page: Page, words: string): Promise<void> {
  await page.getByRole("form", { name: TITLE }).getByRole("button", { name: words }).click();
}

/** The bench reaches for so much to pack a mug. */
async function expectSheetsAtBench(page: Page, sheets: string): Promise<void> {
  await page.goto("/pack");
  await expect(page.getByRole("textbox", { name: "Packing paper, step 1" })).toHaveValue(sheets);
}
