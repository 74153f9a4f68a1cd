import { leadingItemType } from "#lib/packing/leading-item-type";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";

/** A parcel whose weight was promised, under its leading item type; `scaleMg` is null until it is weighed. */
export type PromisedParcel = {
  readonly itemTypeId: string;
  readonly promisedMg: number;
  readonly scaleMg: number | null;
};

/**
 * Parcels for which a weight was promised at listing; voided ones are left out, unusual ones are not: a promise is one.
 *
 * @param db the database
 * @param since first day packed
 */
export async function promisedParcelsSince(db: Database, since: Day): Promise<PromisedParcel[]> {
  const rows = await db.parcel.findMany({
    where: { packedOn: { gte: since }, voidedAt: null, promisedMg: { not: null } },
    orderBy: [{ packedOn: "asc" }, { id: "asc" }],
    select: { promisedMg: true, scaleMg: true, pieces: { select: { itemTypeId: true, pieces: true } } },
  });
  return rows.flatMap(({ promisedMg, scaleMg, pieces }) =>
    promisedMg === null ? [] : [{ itemTypeId: leadingItemType(pieces), promisedMg, scaleMg }],
  );
}
