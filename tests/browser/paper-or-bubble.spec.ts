import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

/** Dear enough that no kind of parcel is cheaper on bubble, and cheap enough that all are. */
const DEAR = "0.90";
const CHEAP = "0.01";

async function tryBubbleAt(page: Page, price: string): Promise<void> {
  const form = page.getByRole("form", { name: "Try other prices" });
  await form.getByLabel("Large bubble, a sq ft").fill(price);
  await form.getByRole("button", { name: "Try these" }).click();
}

/** The row of a kind of parcel, and below it the reason. */
function kind(page: Page, name: string) {
  return page
    .getByRole("rowgroup")
    .filter({ has: page.getByRole("rowheader", { name, exact: true }) })
    .getByRole("row");
}

test.describe("paper or bubble", () => {
  test("both totals and the reason come first, and the answer differs by item type", async ({ page }) => {
    await page.goto("/paper-or-bubble");
    await expect(page.getByRole("heading", { level: 1 })).toContainText(/^Paper as a rule, but/);
    await expect(page.getByText("All on paper", { exact: true }).first()).toBeVisible();
    await expect(
      page.getByText(/All on bubble, the materials cost \$[\d.]+ more than on paper/),
    ).toBeVisible();
    await expect(kind(page, "Framed tile").nth(1)).toContainText(/^Bubble saves .* under the 3 lb step/);
    await expect(kind(page, "Lamp chimney").nth(1)).toContainText(/^Paper’s materials cost/);
  });

  test("a price tried out turns the answer, and is stored nowhere", async ({ page }) => {
    await page.goto("/paper-or-bubble");
    await tryBubbleAt(page, DEAR);
    await expect(page.getByRole("heading", { level: 1 })).toContainText(/^Paper for all that you send/);
    await expect(page.getByText("Tried out, stored nowhere.")).toBeVisible();
    await tryBubbleAt(page, CHEAP);
    await expect(page.getByRole("heading", { level: 1 })).toContainText(/^Bubble for all that you send/);
    await page.getByRole("link", { name: "Back to the prices as they are" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toContainText(/^Paper as a rule, but/);
    await page.goto("/supplies/large-bubble");
    await expect(page.getByText("$31.50").first()).toBeVisible();
  });

  test("what is no price is said at its field, and what was typed stays", async ({ page }) => {
    await page.goto("/paper-or-bubble");
    await tryBubbleAt(page, "cheap");
    const field = page.getByRole("textbox", { name: "Large bubble, a sq ft" });
    await expect(field).toHaveValue("cheap");
    await expect(field).toHaveAttribute("aria-invalid", "true");
    await expect(page.getByText("“cheap” is no price.")).toBeVisible();
  });

  test("one kind of parcel stands side by side, with the price and the weight at which it turns", async ({
    page,
  }) => {
    await page.goto("/paper-or-bubble");
    await page.getByRole("link", { name: "Framed tile", exact: true }).click();
    await expect(page.getByRole("heading", { level: 1 })).toContainText(
      /^Framed tile: cheaper on bubble, by \$/,
    );
    await expect(page.getByText(/With Large bubble at \$0\.\d+ a sq ft both cost the same/)).toBeVisible();
    await expect(page.getByRole("table", { name: /Chance of each step/ })).toContainText("up to 3 lb");
    await expect(
      page.getByRole("img", { name: /Cost of a parcel in each way for bare pieces/ }),
    ).toBeVisible();
    await page.getByText("What each takes, line by line").click();
    await expect(page.getByRole("row", { name: /^Packing paper, \$0\.0757/ })).toContainText("6 sheets");
    await expect(page.getByText("does not certify that a package protects its contents")).toBeVisible();
  });

  test("the plan of the next purchase is handed to Buying as drafts, one for each supplier", async ({
    page,
  }) => {
    await page.goto("/paper-or-bubble");
    const plan = page.getByRole("region", { name: /^For the next 6 weeks, buy/ });
    await expect(plan).toContainText(/proven in/, { timeout: 30_000 });
    await expect(plan.getByRole("table")).toContainText("All on paper");
    const key = await plan.locator("input[name=key]").getAttribute("value");
    const orders = plan.getByRole("listitem").filter({ hasText: /^Demo .* supplier: / });
    const count = await orders.count();
    expect(count).toBeGreaterThan(0);
    await plan.getByRole("button", { name: "Hand to Buying as drafts" }).click();
    await expect(page).toHaveURL(/\/buying$/);
    const drafts = page.locator(`a[href^="/buying/${key}-"]`);
    await expect(drafts).toHaveCount(count);
    // The shop is as it was for who comes after.
    for (let left = count; left > 0; left -= 1) {
      await drafts.first().click();
      await page.getByRole("button", { name: "Throw the draft away" }).click();
      await expect(page).toHaveURL(/\/buying$/);
      await expect(drafts).toHaveCount(left - 1);
    }
  });

  test("minutes and breakage count once they are said", async ({ page }) => {
    await page.goto("/paper-or-bubble#settings");
    const form = page.getByRole("form", { name: "Time and breakage" });
    await form.getByLabel("An hour of your time counts").fill("18");
    await form.getByLabel("On paper, minutes a parcel").fill("12");
    await form.getByLabel("On bubble, minutes a parcel").fill("a few");
    await form.getByRole("button", { name: "Save" }).click();
    await expect(form.getByText("Write minutes from 0 to 600")).toBeVisible();
    await form.getByLabel("On bubble, minutes a parcel").fill("9");
    await form.getByRole("button", { name: "Save" }).click();
    await expect(form.getByText("Saved.")).toBeVisible();
    await page.goto("/paper-or-bubble/lamp-chimney");
    await expect(page.getByRole("row", { name: /^Your time/ })).toContainText("$3.60");
    await page.goto("/paper-or-bubble#settings");
    for (const label of [
      "An hour of your time counts",
      "On paper, minutes a parcel",
      "On bubble, minutes a parcel",
    ]) {
      await form.getByLabel(label).fill("");
    }
    await form.getByRole("button", { name: "Save" }).click();
    await expect(form.getByText("Saved.")).toBeVisible();
  });

  test("the bench says what the other style would cost, with the odds of each step in both", async ({
    page,
  }) => {
    await page.goto("/pack");
    const chip = page
      .getByRole("group", { name: "What is packed" })
      .getByRole("button", { name: /^Framed tile ?,/ });
    await expect(async () => {
      await chip.click();
      await expect(chip).toHaveAttribute("aria-pressed", "true", { timeout: 1000 });
    }).toPass();
    await page.getByRole("combobox", { name: "cushion style" }).selectOption("paper");
    const others = page.getByRole("region", { name: "The other styles" });
    await expect(others).toContainText(
      /On bubble it would cost \$[\d.]+ (less|more) in materials and postage: /,
    );
    await expect(others).toContainText(/On paper: up to 3 lb \d+ in 100, up to 4 lb \d+ in 100\./);
    await others.getByRole("button", { name: "Pack it on bubble" }).click();
    await expect(page.getByRole("combobox", { name: "cushion style" })).toHaveValue("bubble");
    await expect(others).toContainText("On paper it would cost");
  });
});
