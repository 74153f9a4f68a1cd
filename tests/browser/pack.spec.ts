import { expect, type Page, test } from "@playwright/test";
import { axeFaults } from "./axe-faults";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const PHONE = { width: 390, height: 844 };
const RECORDED = { name: "Record this parcel" };

async function bench(page: Page): Promise<void> {
  await page.goto("/pack");
  await expect(page.getByRole("button", RECORDED)).toBeEnabled();
  // Only the browser can make a chip answer: the screen is ready once a press is taken.
  const chips = page.getByRole("group", { name: "What is packed" }).getByRole("button");
  await expect(async () => {
    await chips.nth(1).click();
    await expect(chips.nth(1)).toHaveAttribute("aria-pressed", "true", { timeout: 1000 });
  }).toPass();
}

test.describe("packing on a phone", () => {
  test.use({ viewport: PHONE });

  test("a usual parcel takes a tap on its type and a tap on Record, without the keyboard", async ({
    page,
  }) => {
    await bench(page);
    await page.getByRole("group", { name: "What is packed" }).getByRole("button").first().click();
    await page.getByRole("button", RECORDED).click();
    await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
  });

  test("the record button stays in reach above the tabs, 56 px high", async ({ page }) => {
    await bench(page);
    await page.mouse.wheel(0, 3000);
    const button = page.getByRole("button", RECORDED);
    await expect(button).toBeInViewport({ ratio: 1 });
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(56);
  });

  test("nothing stands beyond the edge of the screen", async ({ page }) => {
    await bench(page);
    const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(beyond).toBeLessThanOrEqual(0);
  });

  test("a parcel that nobody answered for is kept and recorded once when asked again", async ({ page }) => {
    await bench(page);
    const sent: string[] = [];
    page.on("request", (request) => {
      if (request.url().endsWith("/api/parcels")) sent.push(JSON.parse(request.postData() ?? "{}").id);
    });
    await page.route("**/api/parcels", (route) => route.abort());
    await page.getByRole("button", RECORDED).click();
    await expect(page.getByText("One parcel is kept on this device and not recorded yet.")).toBeVisible();
    await page.unroute("**/api/parcels");
    await page.getByRole("button", { name: "Try again" }).click();
    await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
    await expect(page.getByText("kept on this device")).toHaveCount(0);
    expect(new Set(sent).size).toBe(1);
  });

  test("without any connection the bench stays, and what was packed goes out once it is back", async ({
    page,
  }) => {
    await bench(page);
    await page.context().setOffline(true);
    await page.getByRole("button", RECORDED).click();
    await expect(page.getByText("One parcel is kept on this device and not recorded yet.")).toBeVisible();
    // Asking the program for the screen again would end on the browser's own error page.
    await page.waitForTimeout(500);
    await expect(page.getByRole("button", RECORDED)).toBeEnabled();
    await page.context().setOffline(false);
    await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
    await expect(page.getByText("kept on this device")).toHaveCount(0);
  });
});

test("Undo is still offered ten seconds after the record, and takes it back", async ({ page }) => {
  await bench(page);
  await page.getByRole("button", RECORDED).click();
  await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
  await page.waitForTimeout(10_500);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText(/^Done\. Undone:/)).toBeVisible();
});

test("a step is changed by halves with one press", async ({ page }) => {
  await bench(page);
  await page.getByText("½", { exact: true }).click();
  const value = page
    .getByRole("list")
    .filter({ has: page.getByRole("textbox") })
    .getByRole("textbox")
    .first();
  const before = await value.inputValue();
  await page
    .getByRole("button", { name: /^More / })
    .first()
    .click();
  await expect(value).not.toHaveValue(before);
  await page
    .getByRole("button", { name: /^Less / })
    .first()
    .click();
  await expect(value).toHaveValue(before);
});

test("a supply that ran out is replaced in two presses from at most four", async ({ page }) => {
  await bench(page);
  const first = page.getByRole("region", { name: "Packing card" }).getByRole("listitem").first();
  await first.getByRole("button", { name: /^Change / }).click();
  const instead = first.locator("[data-substitute]");
  const count = await instead.count();
  expect(count).toBeGreaterThan(0);
  expect(count).toBeLessThanOrEqual(4);
  const [name] = ((await instead.first().textContent()) ?? "no name").split(":");
  await instead.first().click();
  await expect(first).toContainText(name ?? "no name");
});

test("an amount that can't be read says how to type it", async ({ page }) => {
  await bench(page);
  const card = page.getByRole("region", { name: "Packing card" });
  const amount = card.getByRole("textbox").first();
  const before = await amount.inputValue();
  await amount.fill("a bit");
  await amount.press("Enter");
  await expect(card.getByRole("alert")).toContainText("Type it like 1 1/3");
  await amount.fill(before);
  await amount.press("Enter");
  await expect(card.getByRole("alert")).toHaveCount(0);
});

test.describe("something spoilt at the bench", () => {
  test.use({ viewport: PHONE });

  const spoil = (page: Page) => page.getByRole("button", { name: /^Spoilt: 1 sheet of Tissue/ });
  const booked = (page: Page) => page.getByText(/^Done\. Spoilt: 1 sheet of Tissue/);

  async function list(page: Page): Promise<void> {
    await bench(page);
    await page.getByRole("button", { name: "Something spoilt?" }).click();
    await expect(page.getByRole("group", { name: "Spoilt just now" })).toBeVisible();
  }

  test("is booked in one tap apart from the parcel, and taken back", async ({ page }) => {
    await list(page);
    expect((await spoil(page).boundingBox())?.height).toBeGreaterThanOrEqual(56);
    const reason = page.getByRole("radio", { name: "torn" });
    expect((await page.getByText("torn", { exact: true }).boundingBox())?.height).toBeGreaterThanOrEqual(56);
    await page.getByText("torn", { exact: true }).click();
    await expect(reason).toBeChecked();
    await spoil(page).click();
    await expect(booked(page)).toBeVisible();
    expect(await axeFaults(page, ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])).toEqual([]);
    await page.waitForTimeout(10_500);
    await page.getByRole("button", { name: /^Undo: 1 sheet of Tissue/ }).click();
    await expect(page.getByText(/^Done\. Undone: 1 sheet of Tissue/)).toBeVisible();
    await page.goto("/supplies/tissue");
    await expect(page.getByText("spoilt, taken back").first()).toBeVisible();
  });

  test("without a connection is said not to be recorded, stays as typed, and is booked once", async ({
    page,
  }) => {
    await list(page);
    const amount = page.getByRole("textbox", { name: "spoilt Tissue" });
    await amount.fill("2");
    await amount.press("Enter");
    const two = page.getByRole("button", { name: /^Spoilt: 2 sheets of Tissue/ });
    // The program books it, but its answer is lost on the way back.
    await page.route("**/api/spoilt", async (route) => {
      await route.fetch();
      await route.abort();
    });
    await two.click();
    const said = page.getByRole("listitem").filter({ has: amount }).getByRole("alert");
    await expect(said).toContainText("2 sheets of Tissue is not recorded as spoilt: nobody answered");
    await expect(amount).toHaveValue("2 sheets");
    await page.unroute("**/api/spoilt");
    const answer = page.waitForResponse("**/api/spoilt");
    await two.click();
    expect((await (await answer).json()).kind).toBe("already-spoilt");
    await expect(page.getByText(/^Done\. Spoilt: 2 sheets of Tissue/)).toBeVisible();
    await expect(amount).toHaveValue("1 sheet");
    await page.getByRole("button", { name: /^Undo: 2 sheets of Tissue/ }).click();
    await expect(page.getByText(/^Done\. Undone: 2 sheets of Tissue/)).toBeVisible();
  });

  test("is booked by the keyboard alone", async ({ page }) => {
    await bench(page);
    await page.getByRole("button", { name: "Something spoilt?" }).focus();
    await page.keyboard.press("Enter");
    await spoil(page).focus();
    await page.keyboard.press("Enter");
    await expect(booked(page)).toBeVisible();
    await page.getByRole("button", { name: /^Undo: 1 sheet of Tissue/ }).focus();
    await page.keyboard.press("Enter");
    await expect(page.getByText(/^Done\. Undone: 1 sheet of Tissue/)).toBeVisible();
  });
});

test("a parcel is recorded by the keyboard alone", async ({ page }) => {
  await bench(page);
  await page.getByRole("button", RECORDED).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
});
