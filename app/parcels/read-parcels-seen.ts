import { addDays, weekStart } from "#lib/units/day";
import { parcelsOf } from "#prisma/records/parcel-lists";
import { parcelsPacked } from "#prisma/records/parcels-packed";
import type { ShopNow } from "../_parts/shop-now";
import type { ParcelsSeen } from "./parcels-finding";

const DAYS_OF_A_WEEK = 7;
const MOST_LOOKED_AT = 500;

/**
 * Counts the parcels of last week and this week, and those that broke.
 * @param shopNow the open database, the shop and its day
 * @returns what the first line tells
 */
export async function readParcelsSeen({ db, shop, today }: ShopNow): Promise<ParcelsSeen> {
  const start = weekStart(today, shop.weekStartsOn);
  const before = addDays(start, -DAYS_OF_A_WEEK);
  const [lastWeek, thisWeek, parcels] = await Promise.all([
    parcelsPacked(db, before, addDays(start, -1)),
    parcelsPacked(db, start, today),
    parcelsOf(db, { from: before, to: today, limit: MOST_LOOKED_AT }),
  ]);
  return {
    lastWeek,
    thisWeek,
    broken: parcels.filter((parcel) => parcel.brokenOn !== null && parcel.voidedAt === null).length,
  };
}
