import { expect, test } from "@playwright/test";

test.use({ baseURL: process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000" });

const FIELDS = [
  { address: "/supplies/count", label: "On the shelf" },
  { address: "/recipes/new", label: "What it is" },
  { address: "/pack", label: "Scale says" },
];

for (const { address, label } of FIELDS) {
  test(`what is typed at ${address} before its scripts have come stays`, async ({ page }) => {
    let release = () => {};
    const released = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route("**/_next/static/chunks/**", async (route) => {
      await released;
      await route.continue();
    });
    await page.goto(address, { waitUntil: "commit" });
    const field = page.getByLabel(label).first();
    await field.fill("2 lb");
    const scripts = page.waitForLoadState("networkidle");
    release();
    await scripts;
    // The field is interactive once the framework has marked it as its own.
    await expect
      .poll(
        () => field.evaluate((element) => Object.keys(element).some((key) => key.startsWith("__react"))),
        {
          timeout: 45_000,
        },
      )
      .toBe(true);
    await page.waitForTimeout(500);
    await expect(field).toHaveValue("2 lb");
  });
}
