import type { Database } from "../client";

/** A parcel that an order is in: the shares of all its orders, of 12,000, in one order for all of them. */
export type SharedParcel = {
  readonly parcelId: string;
  readonly shares: readonly number[];
  /** which of the shares is the order's own */
  readonly own: number;
};

/** An order with all parcels that carry it, voided ones left out. */
export type OrderParcels = { readonly reference: string; readonly parcels: readonly SharedParcel[] };

/**
 * The orders in a parcel, each with every parcel that it is in.
 *
 * @param db the database
 * @param parcelId a parcel
 * @returns in the order of their references
 */
export async function orderParcels(db: Database, parcelId: string): Promise<OrderParcels[]> {
  const orders = await db.buyerOrder.findMany({
    where: { parcels: { some: { parcelId } } },
    orderBy: { reference: "asc" },
    include: {
      parcels: {
        where: { parcel: { voidedAt: null } },
        orderBy: { parcel: { recordedAt: "asc" } },
        include: { parcel: { select: { orders: { orderBy: { orderId: "asc" } } } } },
      },
    },
  });
  return orders.map(({ id, reference, parcels }) => ({
    reference,
    parcels: parcels.map(({ parcelId: carried, parcel }) => ({
      parcelId: carried,
      shares: parcel.orders.map(({ share }) => share),
      own: parcel.orders.findIndex(({ orderId }) => orderId === id),
    })),
  }));
}
