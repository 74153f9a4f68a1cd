import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

/** Records a parcel of the shop's first recipe under an order reference of its own, and opens its page. */
async function openFreshParcel(page: Page): Promise<string> {
  const reference = `TEST-${Date.now()}-${Math.round(Math.random() * 1e6)}`;
  await page.goto("/pack");
  await expect(async () => {
    await page.getByLabel("Order reference").fill(reference);
    await page.getByRole("button", { name: "Record this parcel" }).click();
    await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible({ timeout: 3000 });
  }).toPass();
  await page.goto(`/parcels?text=${reference}`);
  await page.getByRole("rowheader").first().getByRole("link").click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("packed");
  return reference;
}

async function opened(page: Page, words: string): Promise<void> {
  await page.locator("summary", { hasText: words }).click();
}

test("the list opens with what went out and finds a parcel by its order reference", async ({ page }) => {
  const reference = await openFreshParcel(page);
  await page.goto("/parcels");
  await expect(page.getByRole("heading", { level: 1 })).toContainText("last week");
  await page.getByLabel("Order reference or note").fill(reference);
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page.getByRole("cell", { name: reference })).toBeVisible();
  await expect(page.getByRole("rowheader")).toHaveCount(1);
});

test("a search that finds nothing leads back to all parcels", async ({ page }) => {
  await page.goto("/parcels?text=no-such-order-reference");
  await page.getByRole("link", { name: "Show all parcels" }).click();
  await expect(page.getByRole("rowheader").first()).toBeVisible();
});

test("a void parcel stays to be seen, with its reversal in the ledger", async ({ page }) => {
  await openFreshParcel(page);
  await opened(page, "It was never packed");
  await page.getByLabel("Why").fill("recorded twice");
  await page.getByRole("button", { name: "Void this parcel" }).click();
  await expect(page.getByText("Void: recorded twice.")).toBeVisible();
  await expect(page.getByText(/takes line \d+ back/).first()).toBeVisible();
});

test("a broken parcel keeps its note and offers its recipe", async ({ page }) => {
  await openFreshParcel(page);
  await opened(page, "It arrived broken");
  await page.getByLabel("What broke").fill("one rim");
  await expect(page.getByRole("link", { name: /^Look at the recipe of/ }).first()).toBeVisible();
  await page.getByRole("button", { name: "Mark as broken" }).click();
  await expect(page.getByText(/: one rim$/)).toBeVisible();
});

test("a return puts back on the shelf only what is filled in", async ({ page }) => {
  await openFreshParcel(page);
  await opened(page, "It came back");
  await page.getByRole("form", { name: "Returned" }).getByRole("textbox").last().fill("1");
  await page.getByRole("button", { name: "Note the return" }).click();
  await expect(page.getByRole("cell", { name: /^line \d+: returned$/ })).toHaveCount(1);
});

test("a correction shows the parcel as it was and saves what changed", async ({ page }) => {
  await openFreshParcel(page);
  await page.getByRole("link", { name: "Correct it" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Put the parcel right.");
  await expect(async () => {
    await page.getByLabel("Note").fill("put right");
    await page.getByRole("button", { name: "Save the correction" }).click();
    await expect(page.getByRole("heading", { name: "What it took" })).toBeVisible({ timeout: 4000 });
  }).toPass();
  await expect(page.getByText("put right")).toBeVisible();
});
