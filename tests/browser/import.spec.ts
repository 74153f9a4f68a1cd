import { expect, test } from "@playwright/test";

test("a seller brings in parcels from a file, sees them first, and books them once", async ({ page }) => {
  const name = `Browser import ${Date.now()}`;
  const rows = [
    "packed on;order;item type;pieces;buyer",
    `2026-01-05;${name}-1;mug;2;Nobody`,
    `2026-01-06;${name}-2;mug;1;Nobody`,
  ];
  const file = { name: "orders.csv", mimeType: "text/csv", buffer: Buffer.from(rows.join("\n")) };
  const send = async () => {
    await page.goto("/setup/import");
    await page.getByLabel("Where the file comes from").fill(name);
    await page.getByLabel("CSV file").setInputFiles(file);
    await page.getByRole("button", { name: "Send the file" }).click();
    await page.getByRole("button", { name: "Read the file" }).click();
    // Where the shop has no mug, the file's text becomes a new item type.
    const asks = page.getByRole("button", { name: "Read the file with these" });
    const counted = page.getByText(/^Known already: /);
    await expect(asks.or(counted)).toBeVisible({ timeout: 30_000 });
    if (await asks.isVisible()) await asks.click();
    await expect(counted).toBeVisible({ timeout: 30_000 });
  };
  await send();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("2 parcels would be booked.", {
    timeout: 30_000,
  });
  await page.getByRole("button", { name: "Book 2 parcels" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Booked 2 parcels.", { timeout: 30_000 });
  await send();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(
    "All parcels of this file are booked already.",
  );
});
