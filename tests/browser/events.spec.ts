import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { expectSoundOnPhone } from "./expect-sound-on-phone";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const PATH = "/outlook/events";
const UPLIFT = "How much more than usual, in percent";
/** On a phone; the project's own, above the 24 px of https://www.w3.org/TR/WCAG22/#target-size-minimum */
const TARGET_PX = 56;

/** Fills the form of a new event that lies far ahead, so that it changes no other journey. */
async function fillNewEvent(page: Page, name: string, lastDay: string) {
  const form = page.getByRole("form", { name: "New event" });
  await form.getByLabel("What happens").fill(name);
  await form.getByLabel("First day").fill("2031-12-01");
  await form.getByLabel("Last day").fill(lastDay);
  await form.getByLabel(UPLIFT).fill("50");
  await form.getByRole("checkbox", { name: "Stoneware mug", exact: true }).check();
  return form;
}

test.describe("planned events", () => {
  test("an event is planned, changed and taken off", async ({ page }) => {
    await page.goto(PATH);
    const form = await fillNewEvent(page, "Browser test market", "2031-12-14");
    await form.getByRole("button", { name: "Plan the event" }).click();
    await expect(form.getByRole("status")).toHaveText("Browser test market is planned.");
    const row = page.getByRole("listitem").filter({ hasText: "Browser test market" });
    await expect(row).toContainText("1 Dec to 14 Dec 2031: half as much again, only Stoneware mug");

    await page.goto(PATH);
    await row.getByText("Change Browser test market").click();
    const change = row.getByRole("form", { name: "Browser test market from 2031-12-01", exact: true });
    await expect(change.getByLabel("Last day")).toHaveValue("2031-12-14");
    await change.getByLabel(UPLIFT).fill("-35");
    await change.getByRole("checkbox", { name: "Stoneware mug", exact: true }).uncheck();
    await change.getByRole("button", { name: "Save the event" }).click();
    await expect(row).toContainText("1 Dec to 14 Dec 2031: −35 %, all item types");

    await page.goto(PATH);
    await expect(row).toContainText("−35 %, all item types");
    await row.getByText("Change Browser test market").click();
    await row.getByRole("button", { name: "Take this event off" }).click();
    await expect(row).toHaveCount(0);
    await page.goto(PATH);
    await expect(page.getByRole("form", { name: "New event" })).toBeVisible();
    await expect(row).toHaveCount(0);
  });

  test("days that cannot be are refused, with the days to choose from and all that was typed", async ({
    page,
  }) => {
    await page.goto(PATH);
    const form = await fillNewEvent(page, "Refused market", "2031-11-30");
    await form.getByRole("button", { name: "Plan the event" }).click();
    await expect(
      form.getByText("The last day lies before the first. Choose 1 Dec 2031 or a later day."),
    ).toBeVisible();
    await expect(form.getByLabel("Last day")).toHaveValue("2031-11-30");
    await expect(form.getByLabel("What happens")).toHaveValue("Refused market");
    await expect(form.getByRole("checkbox", { name: "Stoneware mug", exact: true })).toBeChecked();

    await form.getByLabel("Last day").fill("2032-03-30");
    await form.getByRole("button", { name: "Plan the event" }).click();
    await expect(
      form.getByText("An event lasts at most 120 days. Choose 29 Mar 2032 or an earlier day."),
    ).toBeVisible();
    await page.goto(PATH);
    await expect(page.getByRole("form", { name: "New event" })).toBeVisible();
    await expect(page.getByText("Refused market")).toHaveCount(0);
  });

  test("the demo shop's events say their guess, and the way back leads to Outlook", async ({ page }) => {
    await page.goto(PATH);
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      /^Craft market begins on .+; one more event is planned\.$/,
    );
    await expect(page.getByRole("listitem").filter({ hasText: "Mugs on offer" })).toContainText(
      "twice as much, only Stoneware mug, Stoneware mug pair",
    );
    await expect(page.getByRole("link", { name: "Back to Outlook" })).toHaveAttribute("href", "/outlook");
  });

  for (const colorScheme of ["light", "dark"] as const) {
    test(`has no accessibility fault that axe finds in ${colorScheme} colours, its forms open`, async ({
      page,
    }) => {
      await page.emulateMedia({ colorScheme });
      for (const width of [1280, 390]) {
        await page.setViewportSize({ width, height: 844 });
        await page.goto(PATH);
        await page.getByText("Change Craft market").click();
        await expect(page.getByRole("button", { name: "Take this event off" }).first()).toBeVisible();
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(violations.map((fault) => fault.id)).toEqual([]);
      }
    });
  }

  test("fits a phone, and what is tapped is 56 px high", async ({ page }) => {
    await expectSoundOnPhone(page, PATH);
    const form = page.getByRole("form", { name: "New event" });
    const tapped = [
      page.getByText("Change Craft market"),
      form.locator("label").filter({ hasText: "Stoneware bowl" }),
      form.getByLabel("First day"),
      form.getByRole("button", { name: "Plan the event" }),
    ];
    for (const target of tapped) {
      expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(TARGET_PX);
    }
  });
});
