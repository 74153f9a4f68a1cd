import { readFile } from "node:fs/promises";
import { expect, test } from "@playwright/test";
import { parse } from "csv-parse/sync";
import { expectSoundOnPhone } from "./expect-sound-on-phone";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

test("what packing costs is told by item type, and each type leads to what changed it", async ({ page }) => {
  await page.goto("/parcels");
  await page.getByRole("link", { name: "What packing costs" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("material cost $");
  const first = page.getByRole("table").getByRole("rowheader").first();
  await expect(first).toContainText(/carton \$\d+\.\d\d/);
  await first.getByRole("link").click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("what changed its cards and its cost");
});

test("what packing costs fits a phone and has no accessibility fault that axe finds", async ({ page }) => {
  await expectSoundOnPhone(page, "/parcels/costs");
});

test("a parcel's cost is split by kind of material, and the kinds add up on both bases", async ({ page }) => {
  await page.goto("/parcels");
  await page.getByRole("rowheader").first().getByRole("link").click();
  const table = page.getByRole("table", { name: "Cost by kind of material" });
  await expect(table).toBeVisible();
  const cents = async (column: number): Promise<number[]> => {
    const texts = await table.locator(`tr td:nth-child(${column})`).allTextContents();
    return texts.map((text) => Math.round(Number(text.replace(/[^0-9.]/g, "")) * 100));
  };
  for (const column of [2, 3]) {
    const [together = Number.NaN, ...kinds] = (await cents(column)).toReversed();
    expect(kinds.length).toBeGreaterThan(1);
    expect(kinds.reduce((sum, kind) => sum + kind, 0)).toBe(together);
  }
});

test("parcels are found by day and state without a script, counted, and taken as CSV", async ({
  browser,
}) => {
  const page = await browser.newPage({ javaScriptEnabled: false });
  await page.goto("/parcels");
  await page.locator("summary", { hasText: "By day, style" }).click();
  await page.getByLabel("Style").selectOption("paper");
  await page.getByLabel("What became of them").selectOption("unweighed");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page).toHaveURL(/style=paper.*only=unweighed/);
  const found = Number((await page.getByText(/^\d+ parcels? found\.$/).textContent())?.match(/\d+/)?.[0]);
  expect(found).toBeGreaterThan(0);
  for (const row of await page.getByRole("table").getByRole("row").all()) {
    await expect(row).toContainText(/not weighed|Weight/);
  }
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Take as CSV" }).click(),
  ]);
  const rows: Record<string, string>[] = parse(await readFile(await download.path(), "utf8"), {
    columns: true,
  });
  expect(rows.length).toBe(found);
  expect(rows.every((row) => row["style"] === "paper" && row["weight in g"] === "")).toBe(true);
  await page.close();
});

test("a day in the address that can't be read is said at its field", async ({ page }) => {
  await page.goto("/parcels?from=yesterday");
  await expect(page.getByText("“yesterday” is no day.")).toBeVisible();
  await expect(page.getByLabel("Packed from")).toHaveAttribute("aria-invalid", "true");
});
