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

  // By hand from the demo's terms. Mug pair on paper: 740 g + 2 x 6.6 (tissue) + 8 x 4.6 (bubble) + 5 x 0.07 (strips)
  // + 11 x 27.2 (paper) + 7.25 x 0.701 (tape) + 271 (carton) = 1365.6 g, 3 lb; bought again 2 x 17.50/480
  // + 8 x 26.50/186 + 5 x 11.50/2592 + 11 x 31.50/416 + 7.25 x 18.50/1980 + 25.00/25 = $3.14. Ten sheets of paper more
  // are 272 g, so 1637.6 g or 57.8 oz, said as 3 lb 10 oz, and 10 x 31.50/416, so $3.89.
  test("what a card comes to changes while an amount is typed, beside the card in use", async ({ page }) => {
    await page.goto("/recipes/mug-pair/edit?style=paper");
    const form = page.getByRole("form", { name: "Recipe" });
    const sum = form.getByRole("region", { name: "What the card comes to" });
    const row = (name: string) =>
      sum.getByRole("table", { name: "One piece in its parcel" }).getByRole("row").filter({ hasText: name });
    await expect(row("As typed")).toContainText(/3 lb.*\$3\.14$/);
    const fill = form.getByLabel("How much").nth(6);
    await expect(fill).toHaveValue("8 sheets");
    await fill.fill("18");
    await expect(row("As typed")).toContainText(/3 lb 10 oz.*\$3\.89$/);
    await expect(row("The card in use")).toContainText(/3 lb\$.*\$3\.14$/);
    await expect(row("On bubble, in use")).toBeVisible();
    await expect(sum.getByRole("status")).toContainText("weighs about 3 lb 10 oz, with its carton");
    await fill.fill("eighteen");
    await expect(sum.getByRole("status")).toContainText("Without row 7.");
    await expect(form.getByText("“eighteen” can’t be read")).toBeVisible();
  });

  test("a card can do without a carton, and says so", async ({ page }) => {
    await page.goto("/recipes/mug-pair/edit?style=bubble");
    const form = page.getByRole("form", { name: "Recipe" });
    await form.getByLabel("Up to pieces").first().fill("");
    await expect(form.getByText("No carton is named: that may be so")).toBeVisible();
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
