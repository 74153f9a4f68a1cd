import { z } from "zod";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { type Database, inTransaction } from "../client";
import { cartonSettingsOf, cartonTermsText } from "./carton-terms";

const SHOP_ID = "shop";
const MOST_MINUTES = 600;
const PER_MILLE = 1_000;

const byStyle = <T extends z.ZodType>(value: T) => z.record(z.enum(CUSHION_STYLES), value.nullable());

const termsForm = z.strictObject({
  /** minutes that packing a parcel takes; null: not said */
  minutes: byStyle(z.number().min(0).max(MOST_MINUTES)),
  /** parcels of 1,000 that arrive broken; null: not said */
  brokenPerMille: byStyle(z.number().min(0).max(PER_MILLE)),
});

/** What the seller says of packing in each cushion style. */
export type CushionTerms = z.output<typeof termsForm>;

const NOT_SAID = { paper: null, bubble: null, mixed: null };

/** A shop that counts neither minutes nor breakage. */
export const NO_CUSHION_TERMS: CushionTerms = { minutes: NOT_SAID, brokenPerMille: NOT_SAID };

/**
 * What the seller says of packing in each cushion style.
 *
 * @throws Error if what is kept can't be read
 */
export async function cushionTermsOf(db: Database): Promise<CushionTerms> {
  const row = await db.shop.findUnique({ where: { id: SHOP_ID }, select: { cushionTerms: true } });
  const text = row?.cushionTerms ?? null;
  return text === null ? NO_CUSHION_TERMS : termsForm.parse(JSON.parse(text));
}

/**
 * Keeps what the seller says of packing in each cushion style, and what an hour counts for, which is one with that of
 * cutting cartons down.
 *
 * @param db the database
 * @param terms minutes and breakage
 * @param hourMinor minor units; null: time is not counted
 */
export async function saveCushionTerms(
  db: Database,
  terms: CushionTerms,
  hourMinor: number | null,
): Promise<void> {
  const cushionTerms = JSON.stringify(termsForm.parse(terms));
  await inTransaction(db, async (tx) => {
    const { settings } = await cartonSettingsOf(tx);
    const cartonTerms = cartonTermsText({ ...settings, hourMinor });
    await tx.shop.updateMany({ where: { id: SHOP_ID }, data: { cushionTerms, cartonTerms } });
  });
}
