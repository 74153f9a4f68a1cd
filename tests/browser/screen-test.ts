import { test as base, type Page } from "@playwright/test";

const DESK = { width: 1280, height: 720 };

/**
 * A test that only looks at screens: all of a worker share one page, so that each screen is not paid for with a
 * new browser window and an empty cache. What a test set of colours and size is set back before the next one.
 */
export const screenTest = base.extend<{ page: Page }, { sharedPage: Page }>({
  sharedPage: [
    async ({ browser }, use) => {
      const baseURL = process.env.WADDING_BASE_URL ?? "http://127.0.0.1:3000";
      const context = await browser.newContext({ baseURL, locale: "en-US" });
      await use(await context.newPage());
      await context.close();
    },
    { scope: "worker" },
  ],
  page: async ({ sharedPage }, use) => {
    await sharedPage.emulateMedia({ colorScheme: "light" });
    await sharedPage.setViewportSize(DESK);
    await use(sharedPage);
  },
});
