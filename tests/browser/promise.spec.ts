import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const PHONE = { width: 390, height: 844 };
const BATCH_MS = 120_000;

async function bench(page: Page): Promise<void> {
  await page.goto("/pack");
  const chips = page.getByRole("group", { name: "What is packed" }).getByRole("button");
  await expect(async () => {
    await chips.nth(1).click();
    await expect(chips.nth(1)).toHaveAttribute("aria-pressed", "true", { timeout: 1000 });
  }).toPass();
}

test("at listing time a type gives the band to promise, its odds and what they rest on", async ({ page }) => {
  await page.goto("/pack");
  await page.getByRole("link", { name: "What to promise" }).click();
  await page.getByLabel("What is it?").selectOption("mug-pair");
  await page.getByRole("button", { name: "What can I promise?" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(/^Promise up to \d+ lb: .*\d\d in 100\.$/);
  await expect(page.getByText(/from \d+ weighed parcels/)).toBeVisible();
  await page.getByLabel("Bare weight of one").fill("heavy");
  await page.getByRole("button", { name: "What can I promise?" }).click();
  await expect(page.getByText("“heavy” can’t be read. Write a weight like 370 g or 13 oz.")).toBeVisible();
});

/** Four inputs and a press; the form of a round piece and its usual frailty stand there already. */
async function askBySizes(page: Page, sizes: string, weight: string): Promise<void> {
  await page.getByLabel("What is it?").selectOption({ label: "something new: by its sizes" });
  await page.getByLabel("Outer sizes, handle and spout included").fill(sizes);
  await page.getByLabel("Bare weight of one").fill(weight);
  await page.getByRole("button", { name: "What can I promise?" }).click();
}

for (const javaScriptEnabled of [true, false]) {
  test.describe(`a piece never sold before, ${javaScriptEnabled ? "with" : "without"} scripts`, () => {
    test.use({ viewport: PHONE, javaScriptEnabled });

    test("gets a promise from its sizes, which says that it is a guess and what it rests on", async ({
      page,
    }) => {
      await page.goto("/pack/listing");
      const sizes = page.getByLabel("Outer sizes, handle and spout included");
      await expect(sizes).toBeHidden();
      await askBySizes(page, "4 x 4 x 5 in", "13 oz");
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(
        /^Promise up to .+: .+ in 100\. A guess from its sizes alone\.$/,
      );
      await expect(
        page.getByText(/a guess from its sizes, corrected as your \d+ weighed parcels/),
      ).toBeVisible();
      await expect(page.getByText(/^materials \$\d+\.\d\d bought again today/)).toBeVisible();
      await expect(page.getByText(/^\$\d+\.\d\d to pack and send$/)).toBeVisible();
      await page.getByRole("link", { name: /^Promise it in Carton 8 × 8 × 8/ }).click();
      await expect(page.getByLabel("Carton", { exact: true })).toHaveValue("carton-8x8x8");
      await page.getByText("How this guess was made").click();
      await expect(
        page.getByText(/^Taken as a round piece, hollow like a mug, 4 × 4 × 5 in\./),
      ).toBeVisible();
      await expect(sizes).toHaveValue("4 x 4 x 5 in");
    });

    test("is refused by the field with all that was typed, and told the carton that would do", async ({
      page,
    }) => {
      await page.goto("/pack/listing");
      await askBySizes(page, "4 in x 10 cm", "heavy");
      await expect(page.getByText(/“4 in x 10 cm” mixes inches and centimetres/)).toBeVisible();
      await expect(
        page.getByText("“heavy” can’t be read. Write a weight like 370 g or 13 oz."),
      ).toBeVisible();
      await expect(page.getByLabel("Outer sizes, handle and spout included")).toHaveValue("4 in x 10 cm");
      await expect(page.getByLabel("Bare weight of one")).toHaveValue("heavy");
      await askBySizes(page, "30 x 30 in", "2 kg");
      await expect(
        page.getByText(/One of \d\S* × \d\S* × \d\S* in inside, or larger, would do\./),
      ).toBeVisible();
    });
  });
}

test("what was typed of a new piece begins its item type", async ({ page }) => {
  await page.goto("/pack/listing?type=new&form=round&sizes=10+x+12+cm&bare=370+g");
  await page.getByRole("link", { name: "Make a recipe of it" }).click();
  await expect(page.getByLabel("The bare piece weighs")).toHaveValue("370 g");
  await expect(page.getByLabel("Its outer sizes, handle and spout included")).toHaveValue("10 x 12 cm");
});

test("a known item type is told what packing costs too", async ({ page }) => {
  await page.goto("/pack/listing?type=mug");
  await expect(
    page.getByText(/^materials \$\d+\.\d\d bought again today, \$\d+\.\d\d at their cost/),
  ).toBeVisible();
});

test.describe("at the bench", () => {
  test.use({ viewport: PHONE });

  test("the ceiling of a promised band stays in sight, and a scale over it is said plainly", async ({
    page,
  }) => {
    await bench(page);
    const promised = page.getByLabel("Promised");
    await promised.selectOption({ index: 1 });
    const label = await promised.inputValue();
    await expect(page.getByText(`stay under ${label}`, { exact: true })).toBeVisible();
    const likely = await page
      .getByRole("region", { name: "Weight" })
      .getByRole("heading", { level: 2 })
      .textContent();
    const weight = (likely ?? "").replace(/ (likely|expected)$/, "");
    await page.getByLabel("Scale says").fill(weight);
    await expect(page.getByText(new RegExp(`over the ${label} that was promised`))).toBeVisible();
  });

  test("a reading in the wrong unit is asked about and mended with one press", async ({ page }) => {
    await bench(page);
    const heading = page.getByRole("region", { name: "Weight" }).getByRole("heading", { level: 2 });
    const text = (await heading.textContent()) ?? "";
    const pounds = Number(/(\d+) lb/.exec(text)?.[1] ?? 0);
    const ounces = 16 * pounds + Math.round(Number(/([\d.]+) oz/.exec(text)?.[1] ?? 0));
    await page.getByLabel("Scale says").fill(`${ounces} lb`);
    await page.getByRole("button", { name: `It was ${ounces} oz` }).click();
    await expect(page.getByLabel("Scale says")).toHaveValue(`${ounces} oz`);
  });
});

test("six parcels are recorded from memory, the day chosen once", async ({ page }) => {
  const began = Date.now();
  await page.goto("/pack/several");
  const rows = page.getByRole("listitem").filter({ has: page.getByLabel("What") });
  await expect(rows).toHaveCount(6);
  const types = ["mug", "mug-pair", "mug", "bowl", "mug-pair", "mug"];
  await expect(async () => {
    await rows.first().getByLabel("What").selectOption("mug");
    await expect(page.getByRole("button", { name: "Record this parcel" })).toBeEnabled({ timeout: 1000 });
  }).toPass();
  for (const [at, type] of types.entries()) await rows.nth(at).getByLabel("What").selectOption(type);
  await rows.first().getByLabel("Pieces").fill("none");
  await expect(page.getByRole("button", { name: "Record these 6 parcels" })).toBeDisabled();
  await rows.first().getByLabel("Pieces").fill("2");
  await page.getByRole("button", { name: "Record these 6 parcels" }).click();
  await expect(page.getByText(/^Done\. Recorded:/)).toHaveCount(6);
  expect(Date.now() - began).toBeLessThan(BATCH_MS);
});

test("a rate card is pasted, a wrong row is named, and the card is kept", async ({ page }) => {
  await page.goto("/postage");
  const form = page.getByRole("form", { name: "New rate card" });
  await form.getByLabel("Service").fill("Letters");
  await form.getByLabel("Table of prices").fill("up to  Near  Far\n8 oz  4.60  dear");
  await form.getByRole("button", { name: "Keep this card" }).click();
  await expect(form.getByText("Row 2: 8 oz: “dear” for Far is no price.")).toBeVisible();
  await form.getByLabel("Table of prices").fill("up to  Near  Far\n8 oz  4.60  5.20");
  await form.getByRole("button", { name: "Keep this card" }).click();
  await expect(page.getByRole("table", { name: "Prices of Letters" })).toContainText("$5.20");
  await form.getByLabel("Service").fill("Letters");
  await form.getByLabel("Table of prices").fill("up to  Near\n1 lb  6.00");
  await form.getByRole("button", { name: "Keep this card" }).click();
  await expect(form.getByText("Another card of Letters holds from")).toBeVisible();
  const letters = page.getByRole("region", { name: "Letters", exact: true });
  await letters.getByText("Change this card").click();
  await page.getByRole("form", { name: "Take off Letters" }).getByRole("button").click();
  await expect(page.getByRole("table", { name: "Prices of Letters" })).toHaveCount(0);
});

test("the seller's own stand-in is kept and offered first at the bench", async ({ page }) => {
  await page.goto("/supplies/tissue");
  await page.getByText("Add what stands in for it").click();
  const form = page.getByRole("form", { name: "Stands in for Tissue" });
  await form.getByLabel("Instead, take").selectOption({ label: "Large bubble" });
  await form.getByLabel("so much of it").fill("some");
  await form.getByLabel("where it").selectOption("fill");
  await form.getByRole("button", { name: "Keep this rule" }).click();
  await expect(form.getByText(/“some” can’t be read/)).toBeVisible();
  await form.getByLabel("so much of it").fill("3/4");
  await form.getByRole("button", { name: "Keep this rule" }).click();
  await expect(page.getByText("¾ sq ft of Large bubble instead of 1 sheet")).toBeVisible();
  await bench(page);
  const line = page
    .getByRole("region", { name: "Packing card" })
    .getByRole("listitem")
    .filter({ hasText: "Tissue" })
    .first();
  await line.getByRole("button", { name: /^Change / }).click();
  await expect(line.locator("[data-substitute]").first()).toContainText("Large bubble");
  await page.goto("/supplies/tissue");
  await page.getByRole("form", { name: "Take this rule off" }).getByRole("button").click();
  await expect(page.getByText("instead of 1 sheet")).toHaveCount(0);
});
