import { expect, type Locator, type Page } from "@playwright/test";
import { axeFaults } from "./axe-faults";
import { screenTest as test } from "./screen-test";

// The rules are those of WCAG 2.2, levels A and AA (https://www.w3.org/TR/WCAG22/), as far as a program can see them.
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const PHONE = { width: 390, height: 844 };
const LOOKING_TWICE_AS_RARELY = "/setup/trial?reviewDays=14";

const finding = (page: Page): Locator => page.getByRole("heading", { level: 1 });

/** The first figure of a cell: "−1.2" as -1.2. */
function figureOf(text: string): number {
  return Number(/[−\d.,]+/.exec(text.replaceAll(/[$,]/g, ""))?.[0].replace("−", "-"));
}

test.describe("a trial run", () => {
  test("plays the settings of the form, and what it asked stands in the address", async ({ page }) => {
    await page.goto("/setup");
    await page.getByRole("link", { name: /in a trial run/ }).click();
    await expect(finding(page)).toHaveText(/try other settings on paper/);
    await page.getByLabel("You look at the shelf every so many days").fill("14");
    await page.getByRole("button", { name: "Play them side by side" }).click();
    await expect(page).toHaveURL(/reviewDays=14/);
    await expect(finding(page)).toHaveText(/^Looking every 14 days would .*\.$/);
    const table = page.getByRole("table", { name: /two standard errors/ });
    await expect(table.getByRole("row")).toHaveCount(7);
    const [now, tried, difference] = (
      await table
        .getByRole("row", { name: /^Orders/ })
        .getByRole("cell")
        .allInnerTexts()
    ).map(figureOf);
    expect(tried).toBeLessThan(now ?? 0);
    expect(Math.abs((tried ?? 0) - (now ?? 0) - (difference ?? 0))).toBeLessThan(0.11);
    await expect(page.getByRole("button", { name: "Use the settings to try" })).toBeVisible();
    await page.getByText("More figures, and each supply").click();
    await expect(page.getByRole("table", { name: /^Each supply/ })).toBeVisible();
    await expect(page.getByRole("table", { name: /the least that any levels could come to/ })).toBeVisible();
    await expect(page.getByText(/^Left out: .*Carton 14 × 14 × 10 \(no use is expected/)).toBeVisible();
    expect(await axeFaults(page, RULES)).toEqual([]);
  });

  test("fits a phone in dark colours, and does not scroll sideways", async ({ page }) => {
    await page.setViewportSize(PHONE);
    await page.emulateMedia({ colorScheme: "dark" });
    await page.goto(LOOKING_TWICE_AS_RARELY);
    await expect(finding(page)).toHaveText(/^Looking every 14 days would /);
    await page.getByText("More figures, and each supply").click();
    expect(await axeFaults(page, RULES)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
  });

  test("plays the past year, and speaks of it as past", async ({ page }) => {
    await page.goto(`${LOOKING_TWICE_AS_RARELY}&over=past`);
    await expect(finding(page)).toHaveText(/^Looking every 14 days would have .* 52 weeks/);
    await expect(page.getByText("Use is as it was recorded, day by day.")).toBeVisible();
  });

  test("names the field that can't be read, and keeps what was asked", async ({ page }) => {
    await page.goto("/setup/trial?reviewDays=often&coverWeeks=10");
    await expect(finding(page)).toHaveText(/a setting can’t be read/);
    const field = page.getByLabel("You look at the shelf every so many days");
    await expect(field).toHaveValue("often");
    await expect(field).toHaveAttribute("aria-invalid", "true");
    await expect(field).toHaveAccessibleDescription("Write a whole number from 1 to 60.");
    await expect(page.getByRole("alert").filter({ hasText: "“often”" })).toContainText("from 1 to 60");
    await expect(page.getByLabel("An order should last, weeks")).toHaveValue("10");
  });
});
