import { mkdtempSync, rmSync } from "node:fs";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, expect as expectSoon, type Page, test } from "@playwright/test";
import { startServer } from "../../app/command-line/set-up/start-server.mjs";
import { type CutRelay, cutRelay } from "./cut-relay";

// A shop of its own. The browser reaches it through a relay that cuts the connection: at this machine's own address in
// the network, where a page served over plain HTTP is no secure context (W3C, Secure Contexts), and at
// localhost, where it is one.
export const PHONE = { width: 390, height: 844 };
export const RECORD = { name: "Record this parcel" };

/** Limits that are never reached: nothing here hangs on how quick the machine is. */
export const expect = expectSoon.configure({ timeout: 60_000 });

let server: Awaited<ReturnType<typeof startServer>>;
/** The way through the network of the house, and the one on the same machine. */
export let house: CutRelay;
export let desk: CutRelay;
let folder = "";
/** The shop's database. */
export const file = (): string => join(folder, "shop.db");

/** Opens the shop before the tests of a spec, closes it after them, and mends the connection before each. */
export function inBackRoom(): void {
  test.beforeAll(async ({ browser }) => {
    folder = mkdtempSync(join(tmpdir(), "wadding-outbox-"));
    server = await startServer(file());
    house = await cutRelay(ownNetworkAddress(), server.url);
    desk = await cutRelay("127.0.0.1", server.url);
    await openShop(browser, server.url);
  });
  test.afterAll(async () => {
    await house.close();
    await desk.close();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  });
  test.beforeEach(() => {
    for (const relay of [house, desk]) {
      relay.cut = "none";
      relay.passed.length = 0;
      relay.arrived.length = 0;
    }
  });
}

function ownNetworkAddress(): string {
  const found = Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .find(({ family, internal }) => family === "IPv4" && !internal);
  if (found === undefined)
    throw new Error("This spec needs a machine with a network address of its own (IPv4)");
  return found.address;
}

/** A shop with the recipe of a mug. */
export async function openShop(browser: Browser, url: string): Promise<void> {
  const page = await browser.newPage({ baseURL: url });
  await page.goto("/setup");
  await page.getByLabel("Name of the shop").fill("Back room test shop");
  await page.getByRole("button", { name: "Start the shop" }).click();
  await page.getByRole("checkbox", { name: /^Mug about/ }).check();
  await page.getByRole("button", { name: "Copy the ticked recipes" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("to its first answer");
  await page.close();
}

/** The Pack screen, ready to be used: only the browser can make a chip answer. */
export async function bench(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto("/pack");
  const chip = page.getByRole("group", { name: "What is packed" }).getByRole("button").first();
  await expect(async () => {
    await chip.click();
    await expect(page.getByRole("button", RECORD)).toBeEnabled({ timeout: 1000 });
  }).toPass();
  return page;
}

export async function record(page: Page, parcels: number): Promise<void> {
  for (let done = 0; done < parcels; done += 1) await page.getByRole("button", RECORD).click();
  await expect(page.getByRole("button", RECORD)).toBeEnabled();
}

/** Presses the button from inside the page, as soon as it takes a press: many times quicker than a hand. */
export function recordByPage(page: Page, parcels: number): Promise<void> {
  return page.evaluate(
    async ([words, count]) => {
      const free = () =>
        [...document.querySelectorAll("button")].find((each) => each.textContent === words && !each.disabled);
      const soon = () => new Promise((resolve) => setTimeout(resolve, 5));
      for (let done = 0; done < count; done += 1) {
        while (free() === undefined) await soon();
        free()?.click();
        await soon();
      }
      while (free() === undefined) await soon();
    },
    [RECORD.name, parcels] as const,
  );
}

/** Records parcels for which nobody answers, until so many are kept; the screen counts them. */
export async function recordKept(
  page: Page,
  parcels: number,
  { by = "hand", from = 0 }: { readonly by?: "hand" | "page"; readonly from?: number } = {},
): Promise<void> {
  await (by === "hand" ? record : recordByPage)(page, parcels - from);
  const count = parcels === 1 ? "One parcel is" : `${parcels} parcels are`;
  await expect(page.getByText(`${count} kept on this device and not recorded yet.`)).toBeVisible();
}

export async function allSent(page: Page): Promise<void> {
  await expect(page.getByText(/kept on this device and not recorded/)).toHaveCount(0);
}

/** Kills the tab as a phone does that runs out of memory: no script of the page runs any more. */
export async function reopenedAfterKill(context: BrowserContext, page: Page): Promise<Page> {
  const crashed = page.waitForEvent("crash");
  const session = await context.newCDPSession(page);
  void session.send("Page.crash").catch(() => undefined);
  await crashed;
  house.cut = "none";
  await page.close();
  return bench(context);
}

export function refusedIn(page: Page) {
  return page.getByRole("alert").filter({ hasText: "is not recorded." });
}

export function shopDayOf(page: Page): Promise<string> {
  return page.evaluate(() => new Date().toISOString().slice(0, 10));
}
