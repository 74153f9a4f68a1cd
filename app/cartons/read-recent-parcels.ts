import type { PastParcel } from "#lib/cartons/idle/past-parcel";
import { addDays } from "#lib/units/day";
import { packedKinds } from "#prisma/records/packed-kinds";
import type { ShopNow } from "../_parts/shop-now";
import { packedLoads } from "./packed-loads";
import { pastParcels } from "./past-parcels";
import type { CartonShelf } from "./read-carton-shelf";

/** What of late counts as recent. */
export const RECENT_DAYS = 90;

/** Recent parcels, and how many are not among them. */
export type RecentParcels = { readonly parcels: readonly PastParcel[]; readonly unknown: number };

/**
 * The parcels of the last 90 days, to be held against other cartons.
 *
 * @param now the open database and the shop's day
 * @param shelf cartons, wraps and prices
 */
export async function readRecentParcels(
  { db, today }: Pick<ShopNow, "db" | "today">,
  shelf: CartonShelf,
): Promise<RecentParcels> {
  const kinds = await packedKinds(db, { from: addDays(today, 1 - RECENT_DAYS), to: today });
  const packed = packedLoads(kinds, shelf.loadGround);
  const parcels = pastParcels(packed, shelf.cartons, (style) => shelf.termsIn(style)?.terms ?? null);
  const all = kinds.reduce((sum, kind) => sum + kind.parcels, 0);
  return { parcels, unknown: all - parcels.length };
}
