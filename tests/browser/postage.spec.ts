import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const CARD = [
  "row,what,value,Near,Far",
  "card,service,Boat",
  "card,from,2026-01-01",
  "card,source,the harbour's list",
  "step,up to,1 lb,2.10,3.10",
  "step,up to,2 lb,2.90,4.40",
].join("\n");

const HALF_FILLED = "up to\tNear\tFar\n8 oz\t4.60\t5.20\n1 lb\t6.10";

async function importFile(page: Page, text: string): Promise<void> {
  const form = page.getByRole("form", { name: "Import cards" });
  await form.getByLabel("CSV file of cards").setInputFiles({
    name: "cards.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(text),
  });
  await form.getByRole("button", { name: "Import the cards" }).click();
}

test.describe("postage", () => {
  test("says which card holds, from whom and until when", async ({ page }) => {
    await page.goto("/postage");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      /^The prices of Parcels from .* hold until 31 Dec \d{4}; the next card is there\./,
    );
    await expect(page.getByText("Source: invented for the demo").first()).toBeVisible();
    await expect(page.getByRole("region", { name: "Letter box", exact: true })).toContainText(
      "up to 14 × 10 × 1 in",
    );
    const parcels = page.getByRole("region", { name: "Parcels", exact: true });
    await expect(parcels.getByText(/^Followed by the card from 1 Jan/)).toBeVisible();
  });

  test("a file of cards is refused with the row, and kept whole once it is mended", async ({ page }) => {
    await page.goto("/postage");
    const form = page.getByRole("form", { name: "Import cards" });
    await importFile(page, CARD.replace("2.90,4.40", "2.90,"));
    await expect(form.getByRole("alert")).toContainText("Row 6: 2 lb: the price for Far is missing.");
    await importFile(page, CARD.replace("Near,Far", "Near,Moon"));
    await expect(form.getByRole("alert")).toContainText("Row 1: “Moon” is no zone of yours.");
    await expect(page.getByRole("region", { name: "Boat", exact: true })).toHaveCount(0);

    // Far too large: refused before it is sent. Only the browser's own code can do that, so it is tried until it runs.
    await expect(async () => {
      await form.getByLabel("CSV file of cards").setInputFiles({
        name: "film.csv",
        mimeType: "text/csv",
        buffer: Buffer.alloc(1_500_000, "x"),
      });
      await expect(form.getByText("film.csv is far larger than cards are.")).toBeVisible({ timeout: 1000 });
    }).toPass();

    await importFile(page, CARD);
    const boat = page.getByRole("region", { name: "Boat", exact: true });
    await expect(boat).toContainText("Source: the harbour's list.");
    await expect(boat.getByRole("row", { name: /^2 lb/ })).toContainText("$4.40");

    const file = await page.request.get("/api/rate-cards.csv");
    expect(await file.text()).toContain("card,service,Boat");

    await boat.getByText("Change this card").click();
    await boat.getByRole("button", { name: "Take this card off" }).click();
    await expect(boat).toHaveCount(0);
  });

  test("a table with a missing price is refused at its field, and what was typed stays", async ({ page }) => {
    await page.goto("/postage");
    const form = page.getByRole("form", { name: "New rate card" });
    const table = form.getByLabel("Table of prices");
    await form.getByLabel("Service").fill("Barge");
    await table.fill(HALF_FILLED);
    await form.getByRole("button", { name: "Keep this card" }).click();
    await expect(table).toHaveAccessibleDescription(/Row 3: 1 lb: the price for Far is missing/);
    await expect(table).toHaveValue(HALF_FILLED);
    await expect(form.getByLabel("Service")).toHaveValue("Barge");
  });

  test("a parcel is tried with every service, and says what less weight would save", async ({ page }) => {
    await page.goto("/postage/try");
    const form = page.getByRole("form", { name: "The parcel" });
    await form.getByLabel("It weighs").fill("2 lb 3 oz");
    await form.getByLabel("Three sides, outside").fill("12 x 9 x 8 in");
    await form.getByLabel("It goes to").selectOption({ label: "Near" });
    await form.getByRole("button", { name: "What does it cost?" }).click();
    // Invented: 5.90 and 0.85 for each pound begun.
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("$8.45 with Parcels.");
    const parcels = page.getByRole("region", { name: "Parcels", exact: true });
    await expect(parcels).toContainText("3 oz less would save $0.85: it would pay the step up to 2 lb.");
    await expect(parcels).toContainText("By the card from");
    await expect(page.getByRole("region", { name: "Letter box", exact: true })).toContainText("Not carried.");
    await expect(page.getByText("the carrier’s own rates, scale and tape decide")).toBeVisible();

    await form.getByLabel("It weighs").fill("heavy");
    await form.getByRole("button", { name: "What does it cost?" }).click();
    await expect(form.getByLabel("It weighs")).toHaveAccessibleDescription(/“heavy” can’t be read/);
    await expect(form.getByLabel("It weighs")).toHaveValue("heavy");
  });

  test("what was paid too much is told, the worst first, each with its reason and its parcel", async ({
    page,
  }) => {
    await page.goto("/postage/paid");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      /^\d+ parcels of \d+ cost more than your cards say: \$[\d.]+ in all\.$/,
    );
    const rows = page.getByRole("table", { name: "Parcels that cost more" }).getByRole("row");
    const first = rows.nth(1);
    await expect(first).toContainText(/As for (up to \d+ lb: one step heavier|zone \w+)\./);
    const amounts = (await rows.allTextContents())
      .slice(1)
      .map((row) => Number(/\$([\d.]+) more/.exec(row)?.[1]));
    expect(amounts).toEqual(amounts.toSorted((a, b) => b - a));
    await expect(page.getByRole("heading", { name: /were 1 oz or less over a step: \$/ })).toBeVisible();
    await first.getByRole("link").click();
    await expect(page).toHaveURL(/\/parcels\/demo-/);
  });
});
