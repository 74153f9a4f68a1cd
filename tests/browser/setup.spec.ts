import { expect, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

test.describe("setup", () => {
  test("a supplier is added with its lead time", async ({ page }) => {
    await page.goto("/setup");
    await page.getByText("Add a supplier").click();
    const form = page.getByRole("form", { name: "New supplier" });
    await form.getByLabel("Supplier").fill("Browser test supplier");
    await form.getByRole("button", { name: "Add the supplier" }).click();
    await expect(form.getByText("Write a whole number from 0 to 365.")).toBeVisible();
    await expect(form.getByLabel("Supplier")).toHaveValue("Browser test supplier");
    await form.getByLabel("Days from order to delivery").fill("9");
    await form.getByRole("button", { name: "Add the supplier" }).click();
    await expect(page.getByText("Browser test supplier 9 days, no delivery charge").first()).toBeVisible();
  });

  test("a guess of parcels a week is saved, refused where it cannot be, and taken back", async ({ page }) => {
    await page.goto("/setup");
    const form = page.getByRole("form", { name: "Shop", exact: true });
    const guess = form.getByLabel("About how many parcels do you send a week?");
    await guess.fill("0");
    await form.getByRole("button", { name: "Save the shop" }).click();
    await expect(form.getByText("Write a whole number from 1 to 2,000.")).toBeVisible();
    for (const typed of ["12", ""]) {
      await guess.fill(typed);
      await form.getByRole("button", { name: "Save the shop" }).click();
      await expect(form.getByRole("status")).toHaveText("The shop is saved.");
      await page.goto("/setup");
      await expect(guess).toHaveValue(typed);
    }
  });

  test("every table can be taken away as CSV", async ({ page, request }) => {
    await page.goto("/setup");
    await page.getByText("Or one table at a time").click();
    await expect(page.getByRole("link", { name: "Movement", exact: true })).toHaveAttribute(
      "href",
      "/api/export/Movement.csv",
    );
    const answer = await request.get("/api/export/Supply.csv");
    expect(answer.headers()["content-type"]).toBe("text/csv; charset=utf-8");
    expect(await answer.text()).toMatch(/^id,name,kind,useUnit,/);
    expect((await request.get("/api/export/sqlite_master")).status()).toBe(404);
  });

  test("a backup is one whole database file", async ({ request }) => {
    const body = await (await request.get("/api/backup")).body();
    // The first 16 bytes of every SQLite 3 file: https://www.sqlite.org/fileformat.html#magic_header_string
    expect(body.subarray(0, 16).toString("latin1")).toBe("SQLite format 3\u0000");
  });
});
