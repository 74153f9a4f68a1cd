import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

/**
 * What axe finds at fault on a screen.
 *
 * @param page the open screen. It has no frames, so one run inside it finds all; the builder's usual way opens a
 *   second, blank page for the sums, which takes as long again
 * @param tags of the rules that are held; all of axe's rules where none are given
 * @returns each broken rule with the places that break it; none where all is well
 */
export async function axeFaults(page: Page, tags: readonly string[] = []) {
  const axe = new AxeBuilder({ page }).setLegacyMode();
  if (tags.length > 0) axe.withTags([...tags]);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => ({ id, at: nodes.map((node) => node.target.join(" ")) }));
}
