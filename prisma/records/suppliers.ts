import { type Amount, amount } from "#lib/units/amount";
import { type Database, inTransaction } from "../client";
import type { SupplierModel } from "../generated/models/Supplier";
import { staleForecasts } from "./stale-forecasts";

/** Who sells supplies: lead time in days from order to arrival, delivery charge in minor units. */
export type Supplier = SupplierModel;

/** A supplier's pack, price and price breaks. */
export type Offer = {
  readonly id: string;
  readonly supplyId: string;
  readonly supplierId: string;
  /** "roll of 188 ft". */
  readonly pack: string;
  readonly packAmount: Amount;
  readonly packTyped: string;
  readonly priceMinor: number | null;
  readonly retired: boolean;
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
};

/** Suppliers in use, by name. */
export async function suppliersOf(db: Database): Promise<Supplier[]> {
  return db.supplier.findMany({ where: { retired: false }, orderBy: { name: "asc" } });
}

/** Creates a supplier or saves its changes. Its lead time decides how far a forecast must look. */
export async function saveSupplier(db: Database, supplier: Supplier): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.supplier.upsert({ where: { id: supplier.id }, create: supplier, update: supplier });
    await staleForecasts(tx);
  });
}

/** Offers in use, of one supply or of all. */
export async function offersOf(db: Database, of: { readonly supplyId?: string } = {}): Promise<Offer[]> {
  const rows = await db.offer.findMany({
    where: { retired: false, ...of },
    orderBy: { id: "asc" },
    include: { breaks: { orderBy: { fromPacks: "asc" }, select: { fromPacks: true, priceMinor: true } } },
  });
  return rows.map((row) => ({ ...row, packAmount: amount(Number(row.packAmount)) }));
}

/** Creates an offer or saves its changes, price breaks included. */
export async function saveOffer(db: Database, offer: Offer): Promise<void> {
  const { breaks, ...columns } = offer;
  const data = { ...columns, packAmount: BigInt(offer.packAmount) };
  await inTransaction(db, async (tx) => {
    await tx.offer.upsert({ where: { id: offer.id }, create: data, update: data });
    await tx.offerBreak.deleteMany({ where: { offerId: offer.id } });
    await tx.offerBreak.createMany({ data: breaks.map((row) => ({ ...row, offerId: offer.id })) });
    await staleForecasts(tx);
  });
}
