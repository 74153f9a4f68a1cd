import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const PAPER = "/outlook/supplies/packing-paper";

/** The sums of the table of running totals, a row each. */
async function runningTotals(page: Page): Promise<string[]> {
  return page
    .getByRole("table", { name: /from today on, today counted/ })
    .getByRole("row")
    .allInnerTexts();
}

/** The first figure of a text: "1,220" as 1220. */
function firstFigure(text: string | null): number {
  return Number(/[\d,.]*\d/.exec(text ?? "")?.[0].replaceAll(",", ""));
}

test.describe("outlook", () => {
  test("the shop's parcels stand in the finding, the chart and the lists lead to their subjects", async ({
    page,
  }) => {
    await page.goto("/outlook");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      /^About [\d.]+ parcels a week: [\d,.]+ to [\d,.]+ parcels in the next four weeks/,
    );
    await expect(page.locator("[role=img] svg path.recharts-area-area").first()).toBeVisible();
    await expect(page.getByRole("heading", { name: "What the supplies will take" })).toBeVisible();
    await page.getByRole("link", { name: "Packing paper" }).click();
    await expect(page).toHaveURL(new RegExp(`${PAPER}$`));
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      /^Packing paper: about [\d,.]+ sheets a week/,
    );
  });

  test("the list, the finding and the running totals of a supply say the same", async ({ page }) => {
    await page.goto("/outlook");
    const row = page.getByRole("row").filter({ has: page.getByRole("link", { name: "Packing paper" }) });
    const listed = firstFigure(await row.getByRole("cell").first().textContent());
    await page.goto(PAPER);
    const totals = await runningTotals(page);
    expect(totals).toHaveLength(14);
    expect(totals[4]).toMatch(new RegExp(`\\s${listed.toLocaleString("en-US")}\\s`));
    const said = /([\d,.]+) to ([\d,.]+) sheets in the next/.exec(
      (await page.getByRole("heading", { level: 1 }).textContent()) ?? "",
    );
    expect(said).not.toBeNull();
    expect(totals.some((total) => total.includes(`${said?.[1]} to ${said?.[2]}`))).toBe(true);
  });

  test("each chart has its figures as a table behind it", async ({ page }) => {
    await page.goto(PAPER);
    await page.getByText("The same as a table").click();
    await expect(page.getByRole("table", { name: /^Coming weeks/ }).getByRole("row")).toHaveCount(14);
    await expect(page.getByRole("table", { name: /^Past weeks/ }).getByRole("row")).toHaveCount(27);
    await page.getByText("What it would have said, as a table").click();
    const said = page.getByRole("table", { name: /the newest first/ });
    const sums = (await said.getByRole("row").count()) - 1;
    const outside = await said.getByText("outside").count();
    await expect(page.getByRole("heading", { name: /came out inside the band/ })).toHaveText(
      new RegExp(`^Of ${sums} past sums .* ${sums - outside} came out inside the band\\.$`),
    );
  });

  test("one way is marked as taken, and what the errors mean is said", async ({ page }) => {
    await page.goto(PAPER);
    await expect(page.getByRole("rowheader", { name: /, taken$/ })).toHaveCount(1);
    await expect(page.getByRole("table", { name: "A lower number is better" })).toBeVisible();
    await expect(page.getByText("how far off what it called enough was")).toBeVisible();
    await expect(page.getByRole("heading", { name: "What it rests on" })).toBeVisible();
  });

  test("a what-if answers from its address and leaves the forecast as it was", async ({ page }) => {
    await page.goto(PAPER);
    const before = await runningTotals(page);
    await page.getByLabel("how many more parcels").selectOption("100");
    await page.getByRole("button", { name: "Show what it would take" }).click();
    await expect(page).toHaveURL(/parcels=100/);
    await expect(page.getByRole("status")).toContainText(/instead of .* more\./);
    const rows = page.getByRole("status").getByRole("row");
    const [now, changed] = await rows.nth(2).getByRole("cell").allInnerTexts();
    expect(firstFigure(changed ?? "")).toBeGreaterThan(1.9 * firstFigure(now ?? ""));
    expect(firstFigure(changed ?? "")).toBeLessThan(2.1 * firstFigure(now ?? ""));
    expect(await runningTotals(page)).toEqual(before);
    await page.goto(PAPER);
    expect(await runningTotals(page)).toEqual(before);
  });

  test("more of an item type on bubble takes less paper", async ({ page }) => {
    await page.goto(`${PAPER}?parcels=0&type=lamp-chimney&style=bubble`);
    await expect(page.getByRole("status")).toContainText(/instead of .* less\./);
  });

  test("what can't be read of an address is named with the way out", async ({ page }) => {
    await page.goto(`${PAPER}?parcels=many`);
    await expect(page.getByRole("alert").filter({ hasText: "How many more parcels" })).toContainText(
      "?parcels=20",
    );
    await page.goto(`${PAPER}?parcels=50&type=mug&style=straw`);
    await expect(page.getByRole("alert").filter({ hasText: "cushion style" })).toContainText(
      "Choose another style",
    );
    await expect(page.getByLabel("how many more parcels")).toHaveValue("50");
    await expect(page.getByLabel("which item type")).toHaveValue("mug");
    await page.goto("/outlook?today=soon");
    await expect(page.getByRole("alert").filter({ hasText: "“soon”" })).toContainText("Today's outlook");
  });

  test("a supply that is not used says so, and an unknown one is not found", async ({ page }) => {
    await page.goto("/outlook/supplies/carton-14x14x10");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      "Carton 14 × 14 × 10: no use is expected.",
    );
    expect((await page.goto("/outlook/supplies/nothing-here"))?.status()).toBe(404);
    expect((await page.goto("/outlook/item-types/nothing-here"))?.status()).toBe(404);
  });
});

test.describe("outlook without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("shows its words and tables, and answers a what-if", async ({ page }) => {
    await page.goto(PAPER);
    expect(await runningTotals(page)).toHaveLength(14);
    await page.getByRole("button", { name: "Show what it would take" }).click();
    await expect(page).toHaveURL(/parcels=20/);
    await expect(page.getByText(/About .* instead of .* more\./)).toBeVisible();
  });
});
