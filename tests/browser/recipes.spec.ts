import { expect, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

test.describe("recipes", () => {
  test("a card is changed as a new version from a day on", async ({ page }) => {
    await page.goto("/recipes/mug-pair/edit?style=paper");
    const form = page.getByRole("form", { name: "Recipe" });
    await form.getByLabel("How much").first().fill("1 1/3");
    await form.getByLabel("Holds from").fill("2031-03-04");
    await form.getByRole("button", { name: "Save as a new version" }).click();
    await expect(page).toHaveURL(/\/recipes\/mug-pair$/);
    await page.goto("/recipes");
    await expect(page.getByRole("listitem").filter({ hasText: "mug pair" })).toContainText(
      "paper since 4 Mar",
    );
  });

  test("a step with an amount that can't be read is refused beside its field", async ({ page }) => {
    await page.goto("/recipes/mug-pair/edit?style=bubble");
    const form = page.getByRole("form", { name: "Recipe" });
    await form.getByLabel("How much").first().fill("plenty");
    await form.getByRole("button", { name: "Save as a new version" }).click();
    await expect(form.getByText("“plenty” can’t be read")).toBeVisible();
    await expect(form.getByLabel("How much").first()).toHaveValue("plenty");
  });
});
