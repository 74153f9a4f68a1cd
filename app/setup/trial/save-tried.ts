import type { Database } from "#prisma/client";
import { type Shop, saveShop } from "#prisma/records/shop";
import type { TrialSettings } from "./trial-form";

/**
 * Makes tried settings the shop's own; all else of it stays.
 *
 * @param db the open database
 * @param shop the shop as set up
 * @param tried the settings
 */
export async function saveTried(
  db: Database,
  shop: Shop,
  { promise, ...settings }: TrialSettings,
): Promise<void> {
  await saveShop(db, { ...shop, ...settings, goal: promise.goal, servicePerMille: promise.perMille });
}
