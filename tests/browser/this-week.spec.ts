import { expect, type Page, test } from "@playwright/test";

type CheckBody = {
  finding: string;
  rows: { supplyId: string; supply: string; sentence: string; action: string }[];
};

async function checkOf(page: Page): Promise<CheckBody> {
  const answer = await page.request.get("/api/weekly-check");
  expect(answer.status()).toBe(200);
  return answer.json();
}

test("a seller reads the finding first, then each supply with the sentence that the check says", async ({
  page,
}) => {
  const check = await checkOf(page);
  await page.goto("/");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(check.finding);
  const supplies = page.getByRole("table").getByRole("rowheader");
  await expect(supplies).toHaveText(check.rows.map((row) => row.supply));
  const rows = page.getByRole("row").filter({ has: page.getByRole("rowheader") });
  await expect(rows).toContainText(check.rows.map((row) => row.sentence));
});

test("a seller opens a row and finds how its figures were worked out", async ({ page }) => {
  await page.goto("/");
  const reorderPoint = page.getByText("Reorder point", { exact: true }).first();
  await expect(reorderPoint).toBeHidden();
  await page.getByText("worked out").first().click();
  await expect(page.getByRole("term").first()).toBeVisible();
  await expect(page.getByRole("definition").first()).not.toBeEmpty();
});

test("each strip says in words what it draws", async ({ page }) => {
  const check = await checkOf(page);
  await page.goto("/");
  const strips = page.getByRole("table").getByRole("img");
  await expect(strips).toHaveCount(check.rows.length);
  const words = await strips.evaluateAll((all) => all.map((strip) => strip.getAttribute("aria-label")));
  for (const [index, row] of check.rows.entries()) expect(words[index]).toContain(`${row.supply}: `);
});

test("a seller marks an order as placed, sees it on its way, and takes it back", async ({ page }) => {
  const before = await checkOf(page);
  await page.goto("/");
  const order = page.getByRole("form", { name: /^Order to / }).first();
  await order.getByRole("button", { name: "Mark as ordered" }).click();
  await expect(page.getByText("is marked as placed")).toBeVisible();
  const after = await checkOf(page);
  expect(after.rows.filter((row) => row.action === "order-today").length).toBeLessThan(
    before.rows.filter((row) => row.action === "order-today" || row.action === "order-this-week").length,
  );
  await page.getByRole("button", { name: "Take the order back" }).click();
  await expect(page.getByText("is marked as placed")).toBeHidden();
  expect((await checkOf(page)).rows).toEqual(before.rows);
});

test("an order whose lines all stand at none is refused with the way out", async ({ page }) => {
  await page.goto("/");
  const order = page.getByRole("form", { name: /^Order to / }).first();
  for (const packs of await order.getByRole("textbox").all()) {
    await packs.fill("0");
    await packs.blur();
  }
  await order.getByRole("button", { name: "Mark as ordered" }).click();
  await expect(order.getByRole("alert")).toContainText("Set at least one");
});

test.describe("before scripts run", () => {
  test.use({ javaScriptEnabled: false });

  test("the check is there to read, and an order can be marked and taken back", async ({ page }) => {
    await page.goto("/");
    await expect(page.getByRole("table")).toBeVisible();
    await page.getByRole("button", { name: "Mark as ordered" }).first().click();
    await expect(page.getByText("is marked as placed")).toBeVisible();
    await page.getByRole("button", { name: "Take the order back" }).click();
    await expect(page.getByText("is marked as placed")).toBeHidden();
  });
});

test("a day in the address that can't be read is named, with the way to write it", async ({ page }) => {
  await page.goto("/?today=2026-02-30");
  await expect(page.getByRole("main").getByRole("alert")).toContainText("2026-02-30");
  const answer = await page.request.get("/api/weekly-check?today=2026-02-30");
  expect(answer.status()).toBe(400);
  expect(await answer.json()).toMatchObject({ kind: "unreadable-day", field: "today" });
});

test("on a phone the strip takes the width under its supply's name", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto("/");
  const name = await page.getByRole("rowheader").first().boundingBox();
  const strip = await page.getByRole("table").getByRole("img").first().boundingBox();
  expect(strip?.width).toBeGreaterThan(340);
  expect(strip?.y).toBeGreaterThan(name?.y ?? Number.POSITIVE_INFINITY);
});
