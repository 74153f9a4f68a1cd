import { expect, type Page } from "@playwright/test";
import { axeFaults } from "./axe-faults";

/** Opens a screen on a phone: it fits the width, and axe finds no fault. */
export async function expectSoundOnPhone(page: Page, path: string): Promise<void> {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(path);
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
  expect(await axeFaults(page)).toEqual([]);
}
