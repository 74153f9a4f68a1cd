import { z } from "zod";
import { USUAL_BULGE_UM } from "#lib/cartons/board/charged-size";
import { AGEING } from "#lib/cartons/keeping/ageing";
import { type Database, inTransaction, type Transaction } from "../client";

const SHOP_ID = "shop";
const MOST_WEEKS = 520;
const MOST_MONTHS = 120;
const LARGEST_BULGE_UM = 50_000;
const MOST_MINUTES = 60;

const reach = z.strictObject({
  silentWeeks: z.int().min(1).max(MOST_WEEKS),
  coverMonths: z.number().positive().max(MOST_MONTHS),
});

const termsForm = z
  .strictObject({
    ageing: z.strictObject({ slow: reach, sits: reach }),
    bulgeUm: z.number().min(0).max(LARGEST_BULGE_UM),
    cutMinutes: z.number().positive().max(MOST_MINUTES),
    /** minor units an hour; null: the seller's time is not counted */
    hourMinor: z.int().min(0).nullable(),
  })
  .refine(
    ({ ageing: { slow, sits } }) =>
      slow.silentWeeks <= sits.silentWeeks && slow.coverMonths <= sits.coverMonths,
    "What is slow must come before what sits.",
  );

/** How a shop judges its cartons. */
export type CartonSettings = z.output<typeof termsForm>;

/** Where a new shop begins. Cutting down takes 3 to 6 minutes: from memory, a guess; measure your own. */
export const USUAL_CARTON_SETTINGS: CartonSettings = {
  ageing: AGEING,
  bulgeUm: USUAL_BULGE_UM,
  cutMinutes: 5,
  hourMinor: null,
};

/**
 * How the shop judges its cartons, and the sizes that it could buy as it typed them.
 *
 * @throws Error if what is kept can't be read
 */
export async function cartonSettingsOf(
  db: Database | Transaction,
): Promise<{ readonly settings: CartonSettings; readonly rangeSizes: string }> {
  const row = await db.shop.findUnique({
    where: { id: SHOP_ID },
    select: { cartonTerms: true, rangeSizes: true },
  });
  const text = row?.cartonTerms ?? null;
  const settings = text === null ? USUAL_CARTON_SETTINGS : termsForm.parse(JSON.parse(text));
  return { settings, rangeSizes: row?.rangeSizes ?? "" };
}

/**
 * How the shop judges its cartons as it is kept.
 *
 * @throws ZodError for settings that make no sense
 */
export function cartonTermsText(settings: CartonSettings): string {
  return JSON.stringify(termsForm.parse(settings));
}

/** Keeps how the shop judges its cartons. */
export async function saveCartonSettings(db: Database, settings: CartonSettings): Promise<void> {
  const cartonTerms = cartonTermsText(settings);
  await inTransaction(db, (tx) => tx.shop.updateMany({ where: { id: SHOP_ID }, data: { cartonTerms } }));
}

/** Keeps the sizes that the shop could buy, as typed. */
export async function saveRangeSizes(db: Database, rangeSizes: string): Promise<void> {
  await inTransaction(db, (tx) => tx.shop.updateMany({ where: { id: SHOP_ID }, data: { rangeSizes } }));
}

/** Says of a carton whether it is offered at the bench before others that would do. */
export async function setUseFirst(db: Database, supplyId: string, useFirst: boolean): Promise<boolean> {
  const { count } = await inTransaction(db, (tx) =>
    tx.supply.updateMany({ where: { id: supplyId, kind: "carton" }, data: { useFirst } }),
  );
  return count > 0;
}
