import { type Page, test } from "@playwright/test";
import { axeFaults } from "./axe-faults";
import {
  allSent,
  bench,
  desk,
  expect,
  file,
  house,
  inBackRoom,
  PHONE,
  RECORD,
  record,
  recordByPage,
  recordKept,
  refusedIn,
  reopenedAfterKill,
  shopDayOf,
} from "./back-room";
import { booked, differences, useOf } from "./booked";

const PARCELS = 100;
const DAY_MS = 86_400_000;

test.describe.configure({ timeout: 180_000 });
inBackRoom();

test("a hundred parcels arrive once each, through cuts, lost answers, killed tabs and two tabs", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: house.url, viewport: PHONE });
  const faults: string[] = [];
  context.on("weberror", (fault) => faults.push(String(fault.error())));
  const before = booked(file(), new Set());
  let page = await bench(context);
  // Tests against localhost hide what a phone in the house does not have.
  expect(
    await page.evaluate(() => [isSecureContext, "randomUUID" in crypto, "serviceWorker" in navigator]),
  ).toEqual([false, false, false]);

  await record(page, 6);
  // The connection goes between a parcel's answer and the reading of the new stock: the packer stays at the bench.
  house.cut = "all-but-parcels";
  await record(page, 2);
  await page.waitForTimeout(1000);
  await expect(page.getByRole("button", RECORD)).toBeEnabled({ timeout: 1000 });
  house.cut = "none";
  await context.setOffline(true);
  await recordKept(page, 12);
  await recordKept(page, 30, { by: "page", from: 12 });
  await context.setOffline(false);
  await allSent(page);

  house.cut = "answer-lost";
  await recordKept(page, 16, { by: "page" });
  house.cut = "none";
  await page.getByRole("button", { name: "Try again" }).click();
  await allSent(page);

  // What a network without a way out puts in the program's place, until somebody signs in.
  const anyParcel = "**/api/parcels";
  await page.route(anyParcel, (route) =>
    route.fulfill({ contentType: "text/html", body: "<h1>Sign in</h1>" }),
  );
  await recordKept(page, 2);
  await page.unroute(anyParcel);
  await page.getByRole("button", { name: "Try again" }).click();
  await allSent(page);

  for (const cut of ["request-held", "answer-held"] as const) {
    house.cut = cut;
    const known = house.arrived.length;
    await page.getByRole("button", RECORD).click();
    await expect.poll(() => house.arrived.length).toBe(known + 1);
    page = await reopenedAfterKill(context, page);
    await allSent(page);
  }

  const other = await bench(context);
  house.cut = "refused";
  await recordKept(page, 16, { by: "page" });
  await expect(other.getByText("16 parcels are kept on this device")).toBeVisible();
  house.cut = "none";
  await Promise.all([page, other].map((tab) => tab.getByRole("button", { name: "Try again" }).click()));
  await Promise.all([allSent(page), allSent(other)]);
  await other.close();

  const flapping = setInterval(() => {
    house.cut = house.cut === "none" ? "answer-lost" : "none";
  }, 70);
  await record(page, 4);
  await recordByPage(page, 22);
  clearInterval(flapping);
  house.cut = "none";
  // There may be nothing left to press for: the browser says that the connection is back.
  await page.evaluate(() => window.dispatchEvent(new Event("online")));
  await allSent(page);

  const sent = new Map(house.passed.map(({ id, body }) => [id, body]));
  expect(sent.size).toBe(PARCELS);
  const after = booked(file(), new Set(sent.keys()));
  expect(after.parcels - before.parcels).toBe(PARCELS);
  expect(after.amongThem).toBe(PARCELS);
  expect(after.reversals).toBe(before.reversals);
  expect(differences(after.use, before.use)).toEqual(useOf([...sent.values()]));
  // Without a sending repeated after it was recorded, and one recorded while its answer was lost, nothing was proved.
  expect(house.passed.filter(({ status }) => status === 200).length).toBeGreaterThanOrEqual(17);
  expect(house.passed.filter(({ status }) => status === 201)).toHaveLength(PARCELS);
  expect(faults).toEqual([]);
  await context.close();
});

test("a refused parcel is kept with its reason, dropped, or opened, mended and recorded", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: house.url, viewport: PHONE });
  let page = await bench(context);
  await page.getByText("day, postage, double box, note…").click();
  await page.getByLabel("Day packed").fill("2099-01-05");
  await page.getByRole("button", RECORD).click();
  await expect(refusedIn(page)).toContainText("It is still on the bench.");
  await expect(refusedIn(page)).toContainText("Day packed:");
  await page.getByRole("button", { name: /^Mug/ }).click();
  await expect(refusedIn(page)).toContainText("It is kept on this device.");
  house.cut = "refused";
  await recordKept(page, 1);
  page = await reopenedAfterKill(context, page);
  await expect(refusedIn(page)).toHaveCount(2);
  expect(await axeFaults(page)).toEqual([]);

  await refusedIn(page).first().getByRole("button", { name: "Drop it" }).click();
  await expect(page.getByText(/^Done\. Undone: .* It was not recorded\.$/)).toBeVisible();
  await expect(refusedIn(page)).toHaveCount(1);
  await refusedIn(page).getByRole("button", { name: "Open it" }).click();
  await expect(refusedIn(page)).toContainText("It is still on the bench.");
  await page.getByText("day, postage, double box, note…").click();
  await expect(page.getByLabel("Day packed")).toHaveValue("2099-01-05");
  await page.getByLabel("Day packed").fill(await shopDayOf(page));
  await page.getByRole("button", RECORD).click();
  await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
  await expect(refusedIn(page)).toHaveCount(0);
  expect(house.passed.filter(({ status }) => status === 201)).toHaveLength(1);
  await context.close();
});

test("the question before or after a count waits for its packer, also in a tab opened later", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: house.url, viewport: PHONE });
  let page = await bench(context);
  const question = (tab: Page) =>
    tab.getByRole("alert").filter({ hasText: "before or after the count of that day?" });
  await page.route("**/api/parcels", (route) =>
    route.fulfill({
      status: 409,
      json: { kind: "ask-count-order", supplies: ["no-such-supply"], problems: [] },
    }),
  );
  await page.getByRole("button", RECORD).click();
  await expect(question(page)).toContainText("Was 1 × Mug");
  await expect(page.getByRole("button", RECORD)).toBeEnabled();
  page = await reopenedAfterKill(context, page);
  await question(page).getByRole("button", { name: "Before the count" }).click();
  await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
  await expect(question(page)).toHaveCount(0);
  expect(house.passed.map(({ body, status }) => [JSON.parse(body).countedSameDay, status])).toEqual([
    ["before", 201],
  ]);
  await context.close();
});

test("undoing a kept parcel takes it out of the book too, where it had arrived unseen", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: house.url, viewport: PHONE });
  const page = await bench(context);
  const before = booked(file(), new Set());
  house.cut = "answer-lost";
  await recordKept(page, 1);
  const [parcel] = house.passed;
  expect(parcel?.status).toBe(201);
  house.cut = "refused";
  await page.getByRole("button", { name: "Undo the last" }).click();
  await expect(page.getByText("Taken back, and the program still has to be told")).toBeVisible();
  await page.close();
  house.cut = "none";
  const later = await bench(context);
  await expect(later.getByText(/^Done\. Undone: .* The stock is back\.$/)).toBeVisible();
  await expect(later.getByText("still has to be told")).toHaveCount(0);
  expect(differences(booked(file(), new Set()).use, before.use)).toEqual({});
  await context.close();
});

test("a screen that stays open overnight without a connection knows the new day, and a chosen day stays", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: house.url, viewport: PHONE });
  const page = await bench(context);
  const today = await shopDayOf(page);
  house.cut = "refused";
  await page.clock.setFixedTime(Date.parse(`${today}T12:00:00Z`) + DAY_MS);
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  const tomorrow = await shopDayOf(page);
  await expect(page.getByLabel("Day packed")).toHaveValue(tomorrow);
  await expect(page.getByText(/^Packed today/)).toBeVisible();
  await expect(page.getByText(/^Stock as of \w{3} \d+ \w{3}, \d\d:\d\d\.$/)).toBeVisible();
  await recordKept(page, 1);
  await page.getByText("day, postage, double box, note…").click();
  await page.getByLabel("Day packed").fill(today);
  await recordKept(page, 2, { from: 1 });
  house.cut = "none";
  await page.getByRole("button", { name: "Try again" }).click();
  await allSent(page);
  const days = house.passed.map(({ body }) => JSON.parse(body).packedOn);
  expect([...new Set(days)]).toEqual([tomorrow, today]);
  await context.close();
});

test("where the browser keeps nothing, parcels are sent at once and the screen says so", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: house.url, viewport: PHONE });
  await context.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("The operation is insecure.", "SecurityError");
    };
  });
  const page = await bench(context);
  await expect(page.getByText("This device can't keep parcels")).toBeVisible();
  await page.getByRole("button", RECORD).click();
  await expect(page.getByText(/^Done\. Recorded:/)).toBeVisible();
  house.cut = "answer-lost";
  await page.getByRole("button", RECORD).click();
  await expect(page.getByText("It is still on the bench")).toBeVisible();
  house.cut = "none";
  await page.getByRole("button", RECORD).click();
  await expect(page.getByText("is not recorded.")).toHaveCount(0);
  await expect(page.getByText(/^Done\. Recorded:/)).toHaveCount(2);
  expect(new Set(house.passed.map(({ id }) => id)).size).toBe(2);
  expect(house.passed.filter(({ status }) => status === 201)).toHaveLength(2);
  await context.close();
});

test("on the same machine a closed Pack screen opens without a connection, and goes when the program goes", async ({
  browser,
}) => {
  const context = await browser.newContext({ baseURL: desk.url, viewport: PHONE });
  const page = await bench(context);
  await expect
    .poll(() =>
      page.evaluate(async () => (await navigator.serviceWorker.getRegistration("/pack"))?.active?.state),
    )
    .toBe("activated");
  await page.close();

  desk.cut = "refused";
  const offline = await bench(context);
  await recordKept(offline, 1);
  await expect(
    offline.getByText(/^Stock as of \d\d:\d\d, without the parcel kept on this device\.$/),
  ).toBeVisible();
  await offline.close();
  const later = await bench(context);
  await expect(later.getByText("One parcel is kept on this device and not recorded yet.")).toBeVisible();
  const elsewhere = await context.newPage();
  await expect(elsewhere.goto("/parcels")).rejects.toThrow("ERR_");
  desk.cut = "none";
  await later.reload();
  await expect(later.getByText(/^Done\. Recorded:/)).toBeVisible();
  expect(await later.evaluate(copiedPaths)).toEqual(["/pack"]);

  desk.cut = "stranger";
  await later.goto("/pack");
  await expect(later.getByRole("heading")).toHaveText("Another program");
  // A worker that was let go of stays until the screens that it served are closed.
  const next = await context.newPage();
  await next.goto("/other");
  await Promise.all([later, elsewhere].map((tab) => tab.close()));
  await expect
    .poll(() =>
      next.evaluate(async () => [await caches.keys(), await navigator.serviceWorker.getRegistrations()]),
    )
    .toEqual([[], []]);
  await context.close();
});

/** Addresses of which the worker keeps copies, without the build's own files. */
async function copiedPaths(): Promise<string[]> {
  const paths: string[] = [];
  for (const name of await caches.keys()) {
    for (const { url } of await (await caches.open(name)).keys()) paths.push(new URL(url).pathname);
  }
  return paths.filter((path) => !path.startsWith("/_next/static/"));
}
