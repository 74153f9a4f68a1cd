import { expect, type Page, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

/** A day some days from the one in a field, as the field takes it. */
async function daysFrom(page: Page, label: string, days: number): Promise<string> {
  const shown = new Date(`${await page.getByLabel(label).inputValue()}T12:00:00Z`);
  shown.setUTCDate(shown.getUTCDate() + days);
  return shown.toISOString().slice(0, 10);
}

test.describe("buying", () => {
  test("an order goes from a draft to a part delivery of other packs, and its rest is late", async ({
    page,
  }) => {
    // A carton that the demo never orders: a delivery of another order on a later day would take the offer's place.
    await page.goto("/buying");
    await page.getByText("Write an order by hand").click();
    await page
      .getByRole("form", { name: "New order" })
      .getByLabel("Supplier")
      .selectOption({ label: "Demo cartons supplier" });
    await page.getByRole("button", { name: "Start the draft" }).click();

    await expect(page.getByRole("heading", { level: 1 })).toContainText("A draft to Demo cartons supplier");
    const draft = page.getByRole("form", { name: "Change the draft" });
    await draft.getByLabel("Carton 14 × 14 × 10, bundle of 25").fill("1½");
    await draft.getByRole("button", { name: "Save the draft" }).click();
    await expect(draft.getByText("Write a whole number from 0 to 9,999.")).toBeVisible();
    await expect(draft.getByLabel("Carton 14 × 14 × 10, bundle of 25")).toHaveValue("1½");
    await draft.getByLabel("Carton 14 × 14 × 10, bundle of 25").fill("2");
    await draft.getByRole("button", { name: "Save the draft" }).click();
    await expect(page.getByRole("row").filter({ hasText: "Carton 14 × 14 × 10" })).toContainText("$90.00");

    const place = page.getByRole("form", { name: "Place the order" });
    await place.getByLabel("Ordered on").fill(await daysFrom(page, "Ordered on", 1));
    await place.getByRole("button", { name: "Mark as placed" }).click();
    await expect(place.getByText("is still ahead")).toBeVisible();
    await place.getByLabel("Ordered on").fill(await daysFrom(page, "Ordered on", -11));
    await place.getByRole("button", { name: "Mark as placed" }).click();
    await expect(page.getByText("The order is placed.")).toBeVisible();

    await page.getByRole("link", { name: "It came" }).click();
    const receive = page.getByRole("form", { name: "Receive from Demo cartons supplier" });
    await receive.getByLabel("Came on").fill(await daysFrom(page, "Came on", -5));
    await receive.getByLabel("Packs that came").fill("5");
    await receive.getByLabel("In each pack, really").fill("");
    await receive.getByLabel("Price of one pack").fill("4700");
    await receive.getByRole("button", { name: "Book into stock" }).click();
    await expect(receive.getByText("Write what is in each pack")).toBeVisible();
    await receive.getByLabel("In each pack, really").fill("24");
    await receive.getByRole("button", { name: "Book into stock" }).click();
    await expect(receive.getByText("Only 2 of Carton 14 × 14 × 10 were on order.")).toBeVisible();
    await expect(receive.getByText("the last price paid was")).toBeVisible();
    await expect(receive.getByLabel("More came than was ordered")).toBeVisible();
    await receive.getByLabel("Packs that came").fill("1");
    await receive.getByLabel("Price of one pack").fill("47.00");
    await receive.getByLabel("and is expected on").fill(await daysFrom(page, "Came on", 2));
    await receive.getByRole("button", { name: "Book into stock" }).click();

    await expect(page.getByText("Booked into stock.")).toBeVisible();
    await expect(page.getByRole("heading", { level: 1 })).toContainText("the rest is 3 days late");
    await expect(page.getByText("1 came").first()).toContainText("24 each instead of 25, at $47.00");
    await page.getByLabel("price $47.00 instead of $45.00").uncheck();
    await page.getByRole("button", { name: "Change the offers" }).click();
    await expect(page.getByText("The offers are changed.")).toBeVisible();
    await expect(page.getByLabel("Carton 14 × 14 × 10: 24 in a pack")).toHaveCount(0);
    await expect(page.getByLabel("price $47.00 instead of $45.00")).toBeVisible();

    await page.goto("/buying");
    const row = page.getByRole("listitem").filter({ hasText: "Carton 14 × 14 × 10 (1)" });
    await expect(row).toContainText("3 days late");
    await row.getByRole("link", { name: "Carton 14 × 14 × 10 (1)" }).click();
    await page.getByText("Cancel what is still on order").click();
    await page.getByRole("button", { name: "Cancel Carton 14 × 14 × 10" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toContainText("it came");
  });

  test("an order sheet says what to order, and can be taken away", async ({ page, request }) => {
    await page.goto("/buying/demo-order-draft/sheet");
    await expect(page.getByRole("row").filter({ hasText: "Packing paper" })).toContainText("$86.70");
    await page.getByText("The plain text").click();
    await expect(
      page.getByText("3 × Packing paper, 25 lb bundle, 416 sheets, at $28.90: $86.70"),
    ).toBeVisible();
    const csv = await request.get("/api/order-sheet/demo-order-draft.csv");
    expect(csv.headers()["content-type"]).toBe("text/csv; charset=utf-8");
    expect((await csv.text()).split("\r\n")[0]).toBe("supplier,day,supply,pack,packs,price,sum,currency");
    expect((await request.get("/api/order-sheet/none.csv")).status()).toBe(404);
  });

  test("the days of buying are a calendar to subscribe to", async ({ page, request }) => {
    await page.goto("/buying");
    await expect(page.getByRole("link", { name: "Download the calendar" })).toHaveAttribute(
      "href",
      "/api/order-by.ics",
    );
    const answer = await request.get("/api/order-by.ics");
    expect(answer.headers()["content-type"]).toBe("text/calendar; charset=utf-8");
    expect(await answer.text()).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]+UID:delivery-[\s\S]+END:VCALENDAR\r\n$/);
  });
});
