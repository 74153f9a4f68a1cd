import { type Database, inTransaction, type Transaction } from "../client";
import { type BuyingTerms, goalOf } from "./buying-terms";
import { staleForecasts } from "./stale-forecasts";

/** The shop's own settings. */
export type Shop = ShopBasics & BuyingTerms & PackingTerms;

/** A shop as saved: terms of buying and packing that are not given stay as they are, or as usual for a new shop. */
export type ShopToSave = ShopBasics & Partial<BuyingTerms & PackingTerms>;

/** How the shop packs and promises. */
type PackingTerms = {
  /** Of a thousand parcels so many should stay within a promised weight band. */
  readonly promisePerMille: number;
  /** Text of prisma/records/habits; null for what is common practice. */
  readonly habits: string | null;
};

type ShopBasics = {
  readonly name: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly minorDigits: number;
  /** 1 Monday … 7 Sunday. */
  readonly weekStartsOn: number;
  readonly measures: "imperial" | "metric";
  readonly reviewDays: number;
  readonly servicePerMille: number;
  readonly coverWeeks: number;
  readonly defaultStyle: string;
  /** Parcels a week as the seller guesses; null where nothing was guessed. */
  readonly guessedParcels: number | null;
};

/** What a record needs to know of the shop. */
export type ShopTerms = Pick<Shop, "timeZone" | "currency" | "minorDigits" | "weekStartsOn" | "measures">;

const SHOP_ID = "shop";

/** The shop, or null before it is set up. */
export async function shopOf(db: Database): Promise<Shop | null> {
  const row = await db.shop.findUnique({ where: { id: SHOP_ID }, omit: { id: true } });
  return row === null ? null : { ...row, measures: measuresOf(row), goal: goalOf(row.goal) };
}

/**
 * The shop inside a transaction.
 *
 * @throws Error before the shop is set up
 */
export async function shopIn(tx: Transaction): Promise<ShopTerms> {
  const [row] = await tx.$queryRaw<(Omit<ShopTerms, "measures"> & { measures: string })[]>`
    SELECT "timeZone", "currency", "minorDigits", "weekStartsOn", "measures" FROM "Shop" WHERE "id" = ${SHOP_ID}`;
  if (row === undefined) throw new Error("The shop is not set up yet: save it under Setup first");
  return {
    ...row,
    minorDigits: Number(row.minorDigits),
    weekStartsOn: Number(row.weekStartsOn),
    measures: measuresOf(row),
  };
}

function measuresOf(row: { readonly measures: string }): Shop["measures"] {
  return row.measures === "metric" ? "metric" : "imperial";
}

/** Saves the shop's settings. */
export async function saveShop(db: Database, shop: ShopToSave): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.shop.upsert({ where: { id: SHOP_ID }, create: { id: SHOP_ID, ...shop }, update: shop });
    await staleForecasts(tx);
  });
}
