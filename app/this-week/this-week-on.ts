import type { WeeklyCheck } from "#lib/replenishment/weekly-check";
import { addDays, type Day, weekStart } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { parcelsPacked } from "#prisma/records/parcels-packed";
import { type OpenPurchaseLine, openPurchaseLines } from "#prisma/records/purchases";
import type { Shop } from "#prisma/records/shop";
import { offersOf, suppliersOf } from "#prisma/records/suppliers";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { type PurchaseDraft, purchaseDrafts } from "./purchase-draft";

/** All that the screen says about a day. */
export type ThisWeekFacts = {
  readonly check: WeeklyCheck;
  readonly drafts: readonly PurchaseDraft[];
  readonly openLines: readonly OpenPurchaseLine[];
  readonly parcelsLastWeek: number;
};

/**
 * Reads the weekly check of a day and what belongs to it.
 *
 * @param db - the database
 * @param shop - the shop as set up
 * @param today - the day of the check
 * @returns the check, the orders to place, what is on its way, and the parcels of the week before
 * @throws Error when the shop was removed meanwhile
 */
export async function thisWeekOn(db: Database, shop: Shop, today: Day): Promise<ThisWeekFacts> {
  const thisWeek = weekStart(today, shop.weekStartsOn);
  const [check, offers, suppliers, openLines, parcelsLastWeek] = await Promise.all([
    weeklyCheckOn(db, today),
    offersOf(db),
    suppliersOf(db),
    openPurchaseLines(db),
    parcelsPacked(db, addDays(thisWeek, -7), addDays(thisWeek, -1)),
  ]);
  if (check === null) throw new Error("The shop was removed while its weekly check was read");
  return { check, drafts: purchaseDrafts(check.rows, offers, suppliers), openLines, parcelsLastWeek };
}
