import type { Database } from "../client";
import type { Prisma } from "../generated/client";

/** Parcels in a state that is looked for; voided ones are in none of them. */
export const PARCEL_STATES = ["broken", "promise-broken", "unweighed"] as const;

export type ParcelState = (typeof PARCEL_STATES)[number];

/** Which parcels are meant; all that is given must hold. */
export type ParcelFilter = {
  /** First and last day packed, YYYY-MM-DD. */
  readonly from?: string;
  readonly to?: string;
  readonly itemTypeId?: string;
  /** Part of an order reference or of the note. */
  readonly text?: string;
  readonly style?: string;
  /** A carton of the parcel, outside or inside. */
  readonly cartonId?: string;
  readonly zoneId?: string;
  readonly state?: ParcelState;
};

/**
 * The condition that parcels of a filter meet.
 *
 * @param db the database, for a column that is compared with another one
 * @param filter which parcels
 */
export function parcelWhere(db: Database, filter: ParcelFilter): Prisma.ParcelWhereInput {
  const { from, to, itemTypeId, text, style, cartonId, zoneId, state } = filter;
  return {
    packedOn: { ...(from === undefined ? {} : { gte: from }), ...(to === undefined ? {} : { lte: to }) },
    ...(itemTypeId === undefined ? {} : { pieces: { some: { itemTypeId } } }),
    ...(text === undefined
      ? {}
      : {
          OR: [
            { orders: { some: { order: { reference: { contains: text } } } } },
            { note: { contains: text } },
          ],
        }),
    ...(style === undefined ? {} : { style }),
    ...(cartonId === undefined ? {} : { cartons: { some: { supplyId: cartonId } } }),
    ...(zoneId === undefined ? {} : { zoneId }),
    ...(state === undefined ? {} : { voidedAt: null, ...stateWhere(db, state) }),
  };
}

function stateWhere(db: Database, state: ParcelState): Prisma.ParcelWhereInput {
  if (state === "broken") return { brokenOn: { not: null } };
  if (state === "unweighed") return { scaleMg: null };
  return { scaleMg: { gt: db.parcel.fields.promisedMg } };
}
