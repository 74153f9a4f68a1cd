import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, expect as expectSoon, type Page, test } from "@playwright/test";
import { startServer } from "../../app/command-line/set-up/start-server.mjs";
import { houseAddresses } from "../../app/server/house/house-addresses.mjs";
import { axeFaults } from "./axe-faults";
import { bench, openShop, PHONE, RECORD } from "./back-room";
import { expectSoundOnPhone } from "./expect-sound-on-phone";

// A shop of its own, served to the machine and, at its own address in the network, to paired devices.
const expect = expectSoon.configure({ timeout: 30_000 });
/** What one device records is on the other's screen by then. */
const SEEN_WITHIN = { timeout: 5_000 };

let folder = "";
let server: Awaited<ReturnType<typeof startServer>>;
let house = "";

test.describe.configure({ timeout: 180_000 });

test.beforeAll(async ({ browser }) => {
  const [address] = houseAddresses();
  if (address === undefined) throw new Error("This spec needs a machine with an address in a home network");
  folder = mkdtempSync(join(tmpdir(), "wadding-house-"));
  server = await startServer(join(folder, "shop.db"), ["--share"]);
  house = `http://${address}:${new URL(server.url).port}`;
  await openShop(browser, server.url);
});

test.afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

test("a phone is paired by its code, sees and is seen within seconds, and is sent away", async ({
  browser,
}) => {
  const desk = await browser.newContext({ baseURL: server.url });
  const phone = await browser.newContext({ baseURL: house, viewport: PHONE });
  const devices = await desk.newPage();
  const shown = await devices.goto("/setup/devices");
  expect(shown?.headers()["content-security-policy"]).toBe("frame-ancestors 'none'");
  await expect(devices.getByRole("heading", { level: 1 })).toHaveText("No other device is let in yet.");

  const pairing = await phone.newPage();
  await pairing.goto("/pack");
  await expect(pairing).toHaveURL(`${house}/pair`);
  expect(await axeFaults(pairing)).toEqual([]);
  await expectSoundOnPhone(pairing, "/pair");
  await pairing.getByLabel("The code").fill("0000 0000");
  await pairing.getByRole("button", { name: "Pair this device" }).click();
  await expect(pairing.getByRole("alert")).toContainText("No code holds now");

  const code = await newCode(devices);
  await expect(devices.getByRole("img", { name: `The address ${house}/pair with the code` })).toBeVisible();
  await pairing.goto(`/pair?code=${code.replace(" ", "")}`);
  await pairing.getByLabel("A name for this device").fill("Packing phone");
  await pairing.getByRole("button", { name: "Pair this device" }).click();
  await expect(pairing).toHaveURL(`${house}/`);
  await pairing.close();
  await expect(devices.getByRole("listitem").filter({ hasText: "Packing phone" })).toBeVisible(SEEN_WITHIN);
  await expect(devices.getByRole("img")).toHaveCount(0);

  const onPhone = await bench(phone);
  const onDesk = await bench(desk);
  const parcels = await desk.newPage();
  await parcels.goto("/parcels");
  await expect(headingOf(onDesk)).toHaveText(/^Nothing packed yet today/);
  await onPhone.getByRole("button", RECORD).click();
  await expect(headingOf(onDesk)).toHaveText(/^One parcel packed today/, SEEN_WITHIN);
  await parcels.bringToFront();
  await expect(parcels.getByRole("link", { name: /Mug/ })).toHaveCount(1, SEEN_WITHIN);
  await onDesk.getByRole("button", RECORD).click();
  await expect(headingOf(onPhone)).toHaveText(/^Two parcels packed today/, SEEN_WITHIN);
  await parcels.getByRole("link", { name: /Mug/ }).last().click();
  await expect(parcels.getByText("Packing phone").first()).toBeVisible();

  await devices.bringToFront();
  await devices.getByRole("button", { name: "Send away" }).click();
  await expect(headingOf(devices)).toHaveText("No other device is let in yet.");
  await expect(onPhone.getByText("This device is not let in any more.")).toBeVisible(SEEN_WITHIN);
  await onPhone.getByRole("button", RECORD).click();
  await expect(onPhone.getByText("One parcel is kept on this device and not recorded yet.")).toBeVisible();

  const again = await newCode(devices);
  await onPhone.getByRole("link", { name: "Pair it again" }).click();
  await onPhone.getByLabel("The code").fill(again);
  await onPhone.getByRole("button", { name: "Pair this device" }).click();
  await expect(onPhone).toHaveURL(`${house}/`);
  await onPhone.goto("/pack");
  await expect(headingOf(onPhone)).toHaveText(/^Three parcels packed today/);
  await expect(onPhone.getByText(/kept on this device/)).toHaveCount(0);
});

test("a paired device can neither pair nor send away others", async ({ browser }) => {
  const phone = await pairedPhone(browser);
  const page = await phone.newPage();
  await page.goto("/setup/devices");
  await expect(page.getByText(/Devices are paired and sent away on the computer itself/)).toBeVisible();
  await expect(page.getByRole("button", { name: /Pair a device|Send away/ })).toHaveCount(0);
});

test("what is not paired reads nothing, whatever it asks for", async ({ request }) => {
  for (const path of ["/api/parcels", "/api/export", "/api/backup", "/api/written", "/api/weekly-check"]) {
    const answer = await request.get(`${house}${path}`);
    expect([path, answer.status()]).toEqual([path, 401]);
  }
  const screen = await request.get(`${house}/supplies`, {
    headers: { accept: "text/html" },
    maxRedirects: 0,
  });
  expect([screen.status(), screen.headers()["location"]]).toEqual([303, "/pair"]);
});

async function pairedPhone(browser: Browser): Promise<BrowserContext> {
  const desk = await browser.newPage({ baseURL: server.url });
  await desk.goto("/setup/devices");
  const code = await newCode(desk);
  await desk.close();
  const phone = await browser.newContext({ baseURL: house, viewport: PHONE });
  const page = await phone.newPage();
  await page.goto(`/pair?code=${code.replace(" ", "")}`);
  await page.getByRole("button", { name: "Pair this device" }).click();
  await expect(page).toHaveURL(`${house}/`);
  await page.close();
  return phone;
}

/** Presses the button for a code and reads it. */
async function newCode(devices: Page): Promise<string> {
  await devices.getByRole("button", { name: /^(Pair a device|Make another code)$/ }).click();
  const code = devices.getByRole("region", { name: "The code" }).getByText(/^\d{4} \d{4}$/);
  await expect(code).toBeVisible();
  return (await code.textContent()) ?? "";
}

function headingOf(page: Page) {
  return page.getByRole("heading", { level: 1 });
}
