import { expect, type Page } from "@playwright/test";
import { axeFaults } from "./axe-faults";
import { screenTest as test } from "./screen-test";

// The rules are those of WCAG 2.2, levels A and AA (https://www.w3.org/TR/WCAG22/), as far as a program can
// see them; the target of 56 px on a phone is the project's own.
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const SCREENS = [
  "/",
  "/pack",
  "/parcels",
  "/supplies",
  "/supplies/count",
  "/supplies/new",
  "/cartons",
  "/cartons/fit",
  "/cartons/range",
  "/cartons/carton-14x14x10",
  "/paper-or-bubble",
  "/paper-or-bubble/framed-tile",
  "/postage",
  "/postage/try?weight=4+lb&zone=far",
  "/postage/paid",
  "/recipes",
  "/recipes/mug",
  "/recipes/mug/edit",
  "/recipes/mug/draft",
  "/recipes/mug/changes",
  "/outlook",
  "/setup/import",
  "/setup",
];
const PHONE = { width: 390, height: 844 };

async function expectAccessible(page: Page): Promise<void> {
  await expect(page.getByRole("heading", { level: 1 })).toHaveCount(1);
  expect(await axeFaults(page, RULES)).toEqual([]);
}

for (const address of SCREENS) {
  test.describe(`the screen at ${address}`, () => {
    test("has no fault that can be seen by a program, in light colours on a desk", async ({ page }) => {
      const answer = await page.goto(address);
      expect(answer?.status()).toBe(200);
      await expectAccessible(page);
    });

    test("has none in dark colours on a phone either, and does not scroll sideways", async ({ page }) => {
      await page.emulateMedia({ colorScheme: "dark" });
      await page.setViewportSize(PHONE);
      await page.goto(address);
      await expectAccessible(page);
      const { scrollWidth, clientWidth } = await page.evaluate(() => ({
        scrollWidth: document.documentElement.scrollWidth,
        clientWidth: document.documentElement.clientWidth,
      }));
      expect(scrollWidth).toBeLessThanOrEqual(clientWidth);
    });
  });
}

test("an address that leads nowhere answers 404 and shows the ways out", async ({ page }) => {
  const answer = await page.goto("/nothing-here");
  expect(answer?.status()).toBe(404);
  await expectAccessible(page);
  await expect(page.getByRole("link", { name: "Go to This week" })).toBeVisible();
});

test("the keyboard reaches the content past the navigation", async ({ page }) => {
  await page.goto("/supplies");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("link", { name: "Skip to the content" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.locator("main")).toBeFocused();
});

test("the tabs of a phone are 56 px high and lead to every screen", async ({ page }) => {
  await page.setViewportSize(PHONE);
  await page.goto("/");
  const tabs = page.getByRole("navigation", { name: "Screens, tabs" });
  const height = await tabs.getByRole("link", { name: "Pack" }).evaluate((tab) => tab.clientHeight);
  expect(height).toBeGreaterThanOrEqual(52);
  await tabs.getByText("More").click();
  await tabs.getByRole("link", { name: "Recipes" }).click();
  await expect(page).toHaveURL(/\/recipes$/);
});
