import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const IDLE = "Carton 14 × 14 × 10";
const IDLE_SCREEN = "/cartons/carton-14x14x10";

/** The packing desk with a mug on it; only the browser can make a chip answer. */
async function packMug(page: Page): Promise<void> {
  await page.goto("/pack");
  const chip = page.getByRole("group", { name: "What is packed" }).getByRole("button", {
    name: /^Stoneware mug ?,/,
  });
  await expect(async () => {
    await chip.click();
    await expect(chip).toHaveAttribute("aria-pressed", "true", { timeout: 1000 });
  }).toPass();
}

async function findCarton(page: Page, pieces: string): Promise<void> {
  const form = page.getByRole("form", { name: "The pieces" });
  await form.getByLabel("Three sizes").fill(pieces);
  await form.getByRole("button", { name: "Which carton?" }).click();
}

test.describe("cartons", () => {
  test("the size that sits is named first, with what could have gone in it", async ({ page }) => {
    await page.goto("/cartons");
    await expect(page.getByRole("heading", { level: 1 })).toContainText(/^One size of 8 sits: \d+ cartons/);
    const sits = page.getByRole("region", { name: IDLE });
    await expect(sits).toContainText(/\d+ of the \d+ parcels of the last 90 days could have gone in it/);
    await expect(sits).toContainText("Stoneware mug");
    await sits.getByRole("link", { name: IDLE }).click();
    await expect(page).toHaveURL(new RegExp(`${IDLE_SCREEN}$`));
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(`${IDLE} sits.`);
  });

  test("a size to use first is offered at the bench in one press, until that is taken back", async ({
    page,
  }) => {
    const offer = page.getByText(`To use up first: ${IDLE} takes it too.`);
    await page.goto(IDLE_SCREEN);
    await page.getByRole("button", { name: "Use first", exact: true }).click();
    await expect(page.getByRole("button", { name: "Used first: stop" })).toBeVisible();

    await packMug(page);
    await expect(offer).toBeVisible();
    const carton = page.getByRole("combobox", { name: "carton", exact: true });
    await expect(carton).toHaveValue("carton-8x8x8");
    await page.getByRole("button", { name: "Take 14 × 14 × 10" }).click();
    await expect(offer).toHaveCount(0);
    await expect(carton).toHaveValue("carton-14x14x10");

    await page.goto(IDLE_SCREEN);
    await page.getByRole("button", { name: "Used first: stop" }).click();
    await expect(page.getByRole("button", { name: "Use first", exact: true })).toBeVisible();
    await packMug(page);
    await expect(page.getByRole("button", { name: "Record this parcel" })).toBeEnabled();
    await expect(offer).toHaveCount(0);
  });

  test("sizes typed are answered with three cartons at most, each with its pictures", async ({ page }) => {
    await page.goto("/cartons/fit");
    await findCarton(page, "5 x 5 x 6 in");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(/^Carton [\d × ]+(, cut down)?\.$/);
    const answers = page.getByRole("listitem").filter({ has: page.getByRole("img") });
    const count = await answers.count();
    expect(count).toBeGreaterThanOrEqual(1);
    expect(count).toBeLessThanOrEqual(3);
    for (const answer of await answers.all()) {
      await expect(answer.getByRole("link", { name: /^Carton / })).toBeVisible();
      await expect(answer.getByRole("img", { name: "From above: where the piece lies" })).toBeVisible();
      await expect(answer.getByRole("img", { name: "From the side: where the piece stands" })).toBeVisible();
    }
    await expect(page.getByText("It does not certify that the package protects")).toBeVisible();
  });

  test("sizes that can't be read are told at their field, and stay", async ({ page }) => {
    await page.goto("/cartons/fit");
    await findCarton(page, "5 x 5 x 6 in\n4 x 0 x 3 in");
    const field = page.getByLabel("Three sizes");
    await expect(field).toHaveValue("5 x 5 x 6 in\n4 x 0 x 3 in");
    await expect(field).toHaveAttribute("aria-invalid", "true");
    await expect(field).toHaveAccessibleDescription(/Line 2, “4 x 0 x 3 in”: every size must be above zero/);
    await expect(page.getByRole("img", { name: /^From above/ })).toHaveCount(0);
  });

  test("the sizes to keep are worked out, each range proven or with its gap", async ({ page }) => {
    await page.goto("/cartons/range");
    const form = page.getByRole("form", { name: "Sizes that you could buy" });
    await form.getByLabel("Sizes").fill("10 x 10 x 10 in; 1.10\n12 by");
    await form.getByRole("button", { name: /^Work it out/ }).click();
    await expect(form.getByLabel("Sizes")).toHaveAccessibleDescription(/Line 2, “12 by”/);
    await form.getByLabel("Sizes").fill("10 x 10 x 10 in; 1.10");
    await form.getByRole("button", { name: /^Work it out/ }).click();
    const rows = page.getByRole("table", { name: "The best ranges" }).getByRole("row");
    // Nine sizes: eight stand on the shelf, one was typed. One row is the head.
    await expect(rows).toHaveCount(10, { timeout: 50_000 });
    for (const row of (await rows.all()).slice(1)) {
      await expect(row).toContainText(/ proven|at most \d+\.\d % better is possible/);
    }
    await expect(page.getByRole("heading", { name: "What each size earns" })).toBeVisible();
  });

  test("a carton's form refuses what no carton is, at the field, and keeps what was typed", async ({
    page,
  }) => {
    await page.goto("/supplies/carton-14x14x10/edit");
    const rating = page.getByLabel("Rating as printed");
    const outside = page.getByLabel("Outside, if you measured it");
    await rating.fill("9000 ECT");
    await outside.fill("13 x 14.5 x 11 in");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await expect(rating).toHaveAccessibleDescription(/“9000 ECT” is more than any board bears/);
    await expect(outside).toHaveAccessibleDescription(/The outside length is no more than the inside one/);
    await expect(rating).toHaveValue("9000 ECT");
    await expect(outside).toHaveValue("13 x 14.5 x 11 in");
    await page.goto(IDLE_SCREEN);
    await expect(page.getByText("by its board: what postage is charged for")).toBeVisible();
  });
});
