import { expect, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

test.describe("supplies", () => {
  test("a count of one line is saved on its own and says its difference to the book", async ({ page }) => {
    await page.goto("/supplies/count");
    const line = page.getByRole("listitem").filter({ hasText: "Carton 14 × 14 × 10" });
    await line.getByLabel("On the shelf").fill("23");
    await line.getByRole("button", { name: "Save" }).click();
    await expect(line.getByRole("status")).toContainText("23 counted");
    await expect(line).toContainText("book 23, counted today");
    await page.goto("/supplies");
    await expect(page.getByRole("row").filter({ hasText: "Carton 14 × 14 × 10" })).toContainText("23");
  });

  test("what can't be read keeps what was typed and says how to write it", async ({ page }) => {
    await page.goto("/supplies/count");
    const line = page.getByRole("listitem").filter({ hasText: "Tissue" }).first();
    await line.getByLabel("On the shelf").fill("a few");
    await line.getByRole("button", { name: "Save" }).click();
    await expect(line.getByText("“a few” can’t be read")).toBeVisible();
    await expect(line.getByLabel("On the shelf")).toHaveValue("a few");
  });

  test("spoilt supplies leave the stock with their reason and can be taken back", async ({ page }) => {
    await page.goto("/supplies/tissue");
    const form = page.getByRole("form", { name: "Spoilt Tissue" });
    await form.getByLabel("How many sheets").fill("1/2");
    await form.getByLabel("Why").fill("torn by the browser test");
    await form.getByRole("button", { name: "Book as spoilt" }).click();
    await expect(form.getByRole("status")).toContainText("½ sheet booked as spoilt");
    const row = page.getByRole("listitem").filter({ hasText: "torn by the browser test" }).first();
    await expect(row).toContainText("−½ sheet");
    await row.getByText("Take back").click();
    await row.getByLabel("Why").fill("typed by mistake");
    await row.getByRole("button", { name: "Take this line back" }).click();
    await expect(page.getByText("spoilt, taken back").first()).toBeVisible();
  });

  test("an order is placed and what really came is booked with its own pack size", async ({ page }) => {
    await page.goto("/supplies/large-bubble");
    await page.getByText("Mark an order as placed").click();
    await page.getByLabel("Packs", { exact: true }).fill("2");
    await page.getByRole("button", { name: "Mark as ordered" }).click();
    await expect(page.getByText("On order with")).toBeVisible();
    await page.reload();
    await page.getByText("It came").last().click();
    const form = page.getByRole("form", { name: /^Receive 2 packs of Large bubble/ }).last();
    await form.getByLabel("In each pack, really").fill("120 sq ft");
    await form.getByRole("button", { name: "Book into stock" }).click();
    await expect(page.getByRole("listitem").filter({ hasText: "came in" }).first()).toContainText(
      "+240 sq ft",
    );
  });
});
