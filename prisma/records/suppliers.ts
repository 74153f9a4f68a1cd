import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { type Database, inTransaction, type Transaction } from "../client";
import type { SupplierModel } from "../generated/models/Supplier";
import { staleForecasts } from "./stale-forecasts";

/** Who sells supplies: lead time in days from order to arrival, delivery charge in minor units. */
export type Supplier = SupplierModel;

/** A supplier as saved: what is not given stays as it is, or as usual for a new one. */
export type SupplierToSave = Pick<Supplier, "id" | "name" | "leadTimeDays"> & Partial<Supplier>;

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
  /** "all-units": the price reached counts for every pack; "incremental": for the packs from there on */
  readonly breakKind: BreakKind;
  /** room of one pack at home, millilitres; null where not known */
  readonly volumeMl: number | null;
  readonly volumeTyped: string | null;
  /** the supplier has none now */
  readonly soldOut: boolean;
  /** packs that the supplier sells a customer in a month at most; null: as many as wanted */
  readonly mostPacksAMonth: number | null;
  readonly retired: boolean;
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
};

/** Whether a price break counts for all packs or for those from it on. */
export type BreakKind = "all-units" | "incremental";

/** An offer as saved: what is not given stays as it is, or as usual for a new one. */
export type OfferToSave = Omit<Offer, OfferExtra> & Partial<Pick<Offer, OfferExtra>>;

type OfferExtra = "breakKind" | "volumeMl" | "volumeTyped" | "soldOut" | "mostPacksAMonth";

/** Suppliers in use, by name. */
export async function suppliersOf(db: Database): Promise<Supplier[]> {
  return db.supplier.findMany({ where: { retired: false }, orderBy: { name: "asc" } });
}

/**
 * Creates a supplier or saves its changes. Its lead time decides how far a forecast must look.
 *
 * @param closures the days on which it is closed, in place of those before; left out: they stay as they are
 */
export async function saveSupplier(
  db: Database,
  supplier: SupplierToSave,
  closures?: readonly { readonly fromDay: string; readonly toDay: string }[],
): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.supplier.upsert({ where: { id: supplier.id }, create: supplier, update: supplier });
    if (closures !== undefined) {
      const supplierId = supplier.id;
      await tx.supplierClosure.deleteMany({ where: { supplierId } });
      await tx.supplierClosure.createMany({ data: closures.map((span) => ({ supplierId, ...span })) });
    }
    await staleForecasts(tx);
  });
}

/** Offers in use, of one supply or of all. */
export async function offersOf(
  db: Database | Transaction,
  of: { readonly supplyId?: string } = {},
): Promise<Offer[]> {
  const rows = await db.offer.findMany({
    where: { retired: false, ...of },
    orderBy: { id: "asc" },
    include: { breaks: { orderBy: { fromPacks: "asc" }, select: { fromPacks: true, priceMinor: true } } },
  });
  return rows.map((row) => ({
    ...row,
    packAmount: amount(Number(row.packAmount)),
    breakKind: row.breakKind === "incremental" ? "incremental" : "all-units",
  }));
}

/**
 * Creates an offer or saves its changes, price breaks included. Forecasts look as far ahead as the quickest supplier of
 * a supply delivers, so they grow stale only where who sells what changes: not by a price or a pack.
 *
 * @param on the day from which the price counts: kept in the offer's history of prices. Left out where an offer is
 *   written without a day, as from a shop file; then no history is kept
 */
export async function saveOffer(db: Database, offer: OfferToSave, on?: Day): Promise<void> {
  await inTransaction(db, async (tx) => saveOfferIn(tx, offer, on));
}

/** As `saveOffer`, within a transaction. */
export async function saveOfferIn(tx: Transaction, offer: OfferToSave, on?: Day): Promise<void> {
  const { breaks, ...columns } = offer;
  const data = { ...columns, packAmount: BigInt(offer.packAmount) };
  const before = await tx.offer.findUnique({ where: { id: offer.id } });
  await tx.offer.upsert({ where: { id: offer.id }, create: data, update: data });
  await tx.offerBreak.deleteMany({ where: { offerId: offer.id } });
  await tx.offerBreak.createMany({ data: breaks.map((row) => ({ ...row, offerId: offer.id })) });
  if (on !== undefined && offer.priceMinor !== null && offer.priceMinor !== before?.priceMinor) {
    const price = { offerId: offer.id, fromDay: on, priceMinor: offer.priceMinor };
    const key = { offerId: offer.id, fromDay: on };
    await tx.offerPrice.upsert({ where: { offerId_fromDay: key }, create: price, update: price });
  }
  const sellsTheSame =
    before?.supplyId === offer.supplyId &&
    before.supplierId === offer.supplierId &&
    before.retired === offer.retired;
  if (!sellsTheSame) await staleForecasts(tx);
}

/** What an offer's pack was offered at, oldest first. */
export async function offerPricesOf(
  db: Database,
  offerId: string,
): Promise<{ readonly fromDay: string; readonly priceMinor: number }[]> {
  return db.offerPrice.findMany({
    where: { offerId },
    orderBy: { fromDay: "asc" },
    select: { fromDay: true, priceMinor: true },
  });
}

/** Days, both ends included, on which suppliers neither pack nor send, earliest first. */
export async function closuresOf(
  db: Database,
  of: { readonly supplierId?: string } = {},
): Promise<{ readonly supplierId: string; readonly fromDay: string; readonly toDay: string }[]> {
  return db.supplierClosure.findMany({ where: of, orderBy: [{ supplierId: "asc" }, { fromDay: "asc" }] });
}
