import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const NAME = "Journey jug";

async function describePiece(page: Page, change: Readonly<Record<string, string>> = {}): Promise<void> {
  const form = page.getByRole("form", { name: "The piece" });
  const sizes = { "Across, without the handle": "4", High: "3 1/2 in", "How far out": "1", ...change };
  await form.getByLabel("What", { exact: true }).first().selectOption("handle");
  for (const [label, text] of Object.entries(sizes))
    await form.getByLabel(label, { exact: true }).first().fill(text);
  await form.getByRole("button", { name: "Keep the description" }).click();
}

test.describe("a card from a description", () => {
  test.describe.configure({ mode: "serial" });

  test("a piece is described; what can't be right is refused beside its field and nothing is lost", async ({
    page,
  }) => {
    await page.goto("/recipes/new");
    const item = page.getByRole("form", { name: "New item type" });
    await item.getByLabel("What it is").fill(NAME);
    await item.getByLabel("The bare piece weighs").fill("450 g");
    await item.getByRole("button", { name: "Add the item type" }).click();
    await expect(page).toHaveURL(/\/recipes\/journey-jug$/);
    await page.goto("/recipes/journey-jug/draft");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(`${NAME} was not described yet.`);
    await page.getByRole("link", { name: "Describe the piece" }).click();

    await describePiece(page, { High: "9 cm" });
    const form = page.getByRole("form", { name: "The piece" });
    await expect(form.getByText("The other sizes are in another measure.")).toBeVisible();
    await expect(form.getByLabel("High", { exact: true }).first()).toHaveValue("9 cm");
    await expect(form.getByLabel("Across, without the handle")).toHaveValue("4");

    await describePiece(page);
    await expect(form.getByRole("status")).toContainText("The description is kept.");
  });

  test("only the sizes of the chosen form are asked for", async ({ page }) => {
    await page.goto("/recipes/journey-jug");
    const form = page.getByRole("form", { name: "The piece" });
    await expect(form.getByLabel("Across, without the handle")).toBeVisible();
    await expect(form.getByLabel("Thick")).toBeHidden();
    await form.getByLabel("It is").first().selectOption("flat");
    await expect(form.getByLabel("Thick")).toBeVisible();
    await expect(form.getByLabel("Across, without the handle")).toBeHidden();
  });

  test("three cards are drafted; a smaller cushion is accepted for one of them", async ({ page }) => {
    await page.goto("/recipes/journey-jug");
    await page.getByRole("link", { name: "Draft a card" }).click();
    for (const style of ["On paper", "On bubble", "Mixed"]) {
      await expect(page.getByRole("region", { name: style, exact: true })).toContainText("Weighs about");
    }
    const paper = page.getByRole("region", { name: "On paper", exact: true });
    await expect(paper.getByRole("listitem").first()).toContainText("Fill the hollow loosely with tissue");
    await expect(paper.getByRole("listitem").filter({ hasText: "Pad the handle with paper" })).toContainText(
      "A guess.",
    );
    await paper
      .getByRole("link", { name: /^Draft in it with/ })
      .first()
      .click();
    await expect(page).toHaveURL(/cushion=/);
    await expect(paper).toContainText(/which leaves (1.*) on its tightest side; \1 is asked for/);
  });

  test("a box in a box has both cartons, both tapings and the fill between; too large an inner one has a way out", async ({
    page,
  }) => {
    await page.goto("/recipes/journey-jug/draft");
    const options = page.getByRole("form", { name: "What to draft with" });
    const paper = page.getByRole("region", { name: "On paper", exact: true });
    await options.getByLabel("Box in a box").selectOption("two");
    await options.getByRole("button", { name: "Draft again" }).click();
    await expect(page).toHaveURL(/boxes=two/);
    await expect(paper).toContainText(
      /Round it Carton .*, with a gap of .* in on its tightest side; 1 in is asked for\./,
    );
    for (const step of [
      "Close the inner carton with tape",
      "Lay a base of paper under the inner carton",
      "Stand the inner carton in the middle of the outer one",
      "Fill round the inner carton with paper",
      "Close the outer carton with tape",
    ]) {
      await expect(paper.getByRole("listitem").filter({ hasText: step })).toHaveCount(1);
    }
    await expect(paper).toContainText("With both cartons and some papers.");

    const largest =
      (await options.getByLabel("Inner carton").locator("option").allTextContents()).at(-1) ?? "";
    await options.getByLabel("Inner carton").selectOption({ label: largest });
    await options.getByRole("button", { name: "Draft again" }).click();
    await expect(paper).toContainText(`No carton in use goes round ${largest} with 1 in all round.`);
    await expect(paper).toContainText(/One of .* in inside or more would do: add it under Supplies/);
  });

  test("a cushion or a number of pieces that can't be read drafts nothing and says so", async ({ page }) => {
    await page.goto("/recipes/journey-jug/draft");
    const options = page.getByRole("form", { name: "What to draft with" });
    await options.getByLabel("Pieces in the parcel").fill("some");
    await options.getByRole("button", { name: "Draft again" }).click();
    await expect(options.getByText("Write a whole number from 1 to 24.")).toBeVisible();
    await expect(page.getByRole("region", { name: "On paper", exact: true })).toHaveCount(0);
  });

  test("the draft is kept as a new card, is marked as no figure of the shop, and Pack takes it", async ({
    page,
  }) => {
    await page.goto("/recipes/journey-jug/draft");
    await page.getByRole("button", { name: "Keep as the paper card" }).click();
    await expect(page).toHaveURL(/\/recipes\/journey-jug#paper$/);
    const card = page.getByRole("region", { name: "On paper", exact: true });
    await expect(card).toContainText("Common practice, not your own figures yet");
    await expect(card).toContainText("Drafted from the sizes of the piece, not from your own figures");
    await expect(card).toContainText(/One piece in its parcel weighs about .* bought again today/);

    await page.goto("/recipes/journey-jug/changes");
    await expect(page.getByRole("region", { name: "On paper: the versions of the card" })).toContainText(
      "No parcels were packed by it.",
    );

    await page.goto("/pack");
    // Only the browser can make the list answer: the screen is ready once a choice is taken.
    const chosen = page.getByRole("button", { name: NAME, pressed: true });
    await expect(async () => {
      const others = page.getByLabel("Another item type", { exact: true });
      if ((await chosen.count()) === 0) await others.selectOption({ label: NAME });
      await expect(chosen).toBeVisible({ timeout: 1_000 });
    }).toPass();
    await expect(page.getByRole("region", { name: "Packing card" })).toContainText(
      "Fill the hollow loosely with tissue",
    );

    await page.goto("/recipes/journey-jug#item-type");
    const item = page.getByRole("form", { name: NAME });
    await item.getByLabel("No longer sold").check();
    await item.getByRole("button", { name: "Save the item type" }).click();
    await expect(page).toHaveURL(/\/recipes$/);
  });
});
