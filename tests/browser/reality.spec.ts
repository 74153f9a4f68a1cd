import { expect } from "@playwright/test";
import { expectSoundOnPhone } from "./expect-sound-on-phone";
import { screenTest as test } from "./screen-test";

// The demo shop's cards are right within 3 %, so that its counts propose no change: what an answer does is held by
// tests/prisma/records/card-evidence.test.ts.
test.describe("card against reality", () => {
  test("is reached from the recipes and says what the counts say of each supply", async ({ page }) => {
    await page.goto("/recipes");
    await page.getByRole("link", { name: "Card against reality" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toContainText("The counts");
    const tissue = page.getByRole("listitem").filter({ has: page.getByRole("link", { name: "Tissue" }) });
    await expect(tissue).toContainText(
      /Tissue: \d\.\d\d times the cards, truly \d\.\d\d to \d\.\d\d, from \d+ counts/,
    );
    await tissue.locator("summary").click();
    await expect(tissue.getByText("Stoneware vase on paper, “Wrap all of it”")).toBeVisible();
    await expect(page.getByText("nothing changes before you say so")).toBeVisible();
  });

  test("has no accessibility fault that axe finds and fits a phone", async ({ page }) => {
    await expectSoundOnPhone(page, "/recipes/reality");
  });
});
