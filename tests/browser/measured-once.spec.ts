import { expect, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

test("a measure far from the usual is asked about before it is believed", async ({ page }) => {
  await page.goto("/recipes/habits");
  const form = page.getByRole("form", { name: "One carton filled" });
  await form.getByLabel("The empty carton").selectOption({ label: "Carton 12 × 12 × 14" });
  await form.getByLabel("was filled with").selectOption({ label: "Packing paper" });
  await form.getByLabel("so much of it").fill("some");
  await form.getByRole("button", { name: "Keep how far it goes" }).click();
  await expect(form.getByText("“some” can’t be read.")).toBeVisible();
  await form.getByLabel("so much of it").fill("3");
  await form.getByRole("button", { name: "Keep how far it goes" }).click();
  await expect(
    form.getByText(/^That is 1\d times what is usual\. Check the unit and the count/),
  ).toBeVisible();
  await expect(form.getByLabel("It is right all the same")).toBeVisible();
});

test("rolls of tape that were finished say how much more a carton takes than its pattern", async ({
  page,
}) => {
  await page.goto("/recipes/habits");
  const form = page.getByRole("form", { name: "Rolls finished" });
  await form.getByLabel("Tape").selectOption({ label: "Carton tape" });
  await form.getByLabel("closed cartons like").selectOption({ label: "Carton 12 × 12 × 14" });
  await form.getByLabel("so many of them").fill("0");
  await form.getByRole("button", { name: "Keep how much tape it takes" }).click();
  await expect(form.getByText("Write a whole number from 1 to 9,999.")).toBeVisible();
  await form.getByLabel("so many of them").fill("30");
  await form.getByRole("button", { name: "Keep how much tape it takes" }).click();
  await expect(form.getByRole("status")).toHaveText(
    /^Kept: [\d.]+ times the pattern, \d+ in for such a carton\.$/,
  );
});
