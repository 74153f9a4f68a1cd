import { expect, type Page, test } from "@playwright/test";

const PLAN_MS = 60_000;

/** Opens This week and waits until the plan over all suppliers is there. */
async function planned(page: Page, address = "/"): Promise<void> {
  await page.goto(address);
  await expect(page.getByText("is being worked out")).toBeHidden({ timeout: PLAN_MS });
}

test("a seller reads what the plan comes to, why each line is in it, and how it was made", async ({
  page,
}) => {
  test.setTimeout(2 * PLAN_MS);
  await planned(page);
  await expect(
    page.getByText(/with delivery; (as use is expected, the next in the week from|none after that)/),
  ).toBeVisible();
  await expect(page.getByText(/a pack; (needed|rides along)/).first()).toBeVisible();
  await page.getByText("How this plan was made").click();
  await expect(page.getByText(/^(Worked out for all suppliers|By rule of thumb)/)).toBeVisible();
  const costs = page.getByRole("table", { name: "What 13 weeks come to" });
  await expect(costs.getByRole("rowheader", { name: "Delivery" })).toBeVisible();
});

test("only what is urgent is never more than the cheapest plan orders this week", async ({ page }) => {
  test.setTimeout(2 * PLAN_MS);
  const packs = async () => {
    const fields = await page.getByRole("textbox", { name: /^packs of/i }).all();
    const values = await Promise.all(fields.map((field) => field.inputValue()));
    return values.reduce((sum, value) => sum + Number(value), 0);
  };
  await planned(page);
  const all = await packs();
  await page.getByRole("link", { name: "Only what is urgent" }).click();
  await expect(page.getByRole("link", { name: "Only what is urgent" })).toHaveAttribute(
    "aria-current",
    "true",
  );
  await expect(page.getByText("is being worked out")).toBeHidden({ timeout: PLAN_MS });
  const urgent = await packs();
  expect(urgent).toBeGreaterThan(0);
  expect(urgent).toBeLessThanOrEqual(all);
});

test("a sum too small for what is needed is named, with the least that would help", async ({ page }) => {
  test.setTimeout(2 * PLAN_MS);
  await planned(page, "/?aim=within&sum=5");
  await expect(page.getByText("Your limits leave some need unmet.")).toBeVisible();
  await expect(page.getByText(/is too little: .* more would do/)).toBeVisible();
});

test("a sum that can't be read is named at its field, and the cheapest plan is shown", async ({ page }) => {
  await page.goto("/?aim=within&sum=sixty");
  const field = page.getByRole("textbox", { name: "Within, USD" });
  await expect(field).toHaveAccessibleDescription(/“sixty” can't be read as a sum/);
  await expect(page.getByRole("link", { name: "Cheapest overall" })).toHaveAttribute("aria-current", "true");
});
