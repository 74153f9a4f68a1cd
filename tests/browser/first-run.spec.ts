import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, type Page, test } from "@playwright/test";
import { startServer } from "../../app/command-line/set-up/start-server.mjs";
import { axeFaults } from "./axe-faults";

// A new shop of its own, beside the demo shop of the other journeys.
const PHONE = { width: 390, height: 844 };

let server: Awaited<ReturnType<typeof startServer>>;
let folder = "";

test.describe("a new shop on a phone", () => {
  test.beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "wadding-first-run-"));
    server = await startServer(join(folder, "shop.db"));
  });
  test.afterAll(async () => {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  test("comes to its first answer from copied recipes, counts and two parcels, without a price", async ({
    browser,
  }) => {
    const context = await browser.newContext({ baseURL: server.url, viewport: PHONE });
    const page = await context.newPage();
    await page.goto("/");
    await expect(page.getByRole("listitem").nth(1)).toContainText("Copy the recipes of what you sell");
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole("link", { name: "Start my shop" }).click();

    await page.getByRole("button", { name: "Start the shop" }).click();
    await expect(page.getByText("Give your shop a name.")).toBeVisible();
    await page.getByLabel("Name of the shop").fill("Browser test shop");
    await page.getByRole("button", { name: "Start the shop" }).click();

    await expect(heading(page)).toContainText("Tick what you sell");
    await page.getByRole("checkbox", { name: /^Mug about/ }).check();
    await page.getByRole("button", { name: "Copy the ticked recipes" }).click();

    await expect(heading(page)).toHaveText("Browser test shop has 3 steps to go to its first answer.");
    await page.getByLabel("Supplier", { exact: true }).fill("Browser test supplier");
    await page.getByLabel("Days from order to delivery").fill("5");
    await page.getByRole("button", { name: "Add the supplier" }).click();
    await expect(heading(page)).toContainText("2 steps to go");
    await page.getByRole("link", { name: /^Count what is on the shelf/ }).click();

    await expect(heading(page)).toContainText("supplies to count for the first time");
    expect(await axeFaults(page)).toEqual([]);
    await count(page, "Tissue", "40");
    await count(page, "Small bubble", "2 full");
    await count(page, "Carton 8 × 8 × 8", "3");
    await page.getByRole("link", { name: "See this week" }).click();

    await expect(heading(page)).toContainText("Record parcels to see how long the shelf lasts");
    await expect(page.getByRole("img", { name: /Tissue: no use known/ })).toBeVisible();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole("link", { name: /^Record the first parcels/ }).click();
    for (const done of ["One parcel packed today.", "Two parcels packed today."]) {
      await page.getByRole("button", { name: "Record this parcel" }).click();
      await expect(heading(page)).toHaveText(done);
    }

    await page.goto("/");
    await expect(heading(page)).toContainText(/^Order .+ today/);
    await expect(page.getByText("A guess: the use comes from the first days.").first()).toBeVisible();
    await expect(page.getByText("The first ten minutes")).toHaveCount(0);
    await page.getByRole("link", { name: "count this" }).first().click();
    await expect(page).toHaveURL(/\/supplies\/count#/);
    await context.close();
  });
});

function heading(page: Page) {
  return page.getByRole("heading", { level: 1 });
}

/** Counts one line with the keyboard alone; a line that can't be read keeps what was typed and the focus. */
async function count(page: Page, supply: string, typed: string): Promise<void> {
  const line = page.getByRole("form", { name: `Count ${supply}` });
  const field = line.getByLabel("On the shelf");
  await field.fill("plenty");
  await field.press("Enter");
  await expect(line.getByText("“plenty” can’t be read.")).toBeVisible();
  await expect(field).toHaveValue("plenty");
  await expect(field).toBeFocused();
  await field.fill(typed);
  await field.press("Enter");
  await expect(page.locator("li", { has: line }).getByRole("status")).toContainText("the first count");
}
