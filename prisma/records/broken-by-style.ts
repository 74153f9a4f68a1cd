import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";

/** Parcels of one style, and how many of them arrived broken. */
export type BrokenOfStyle = { readonly parcels: number; readonly broken: number };

/**
 * How many parcels went out in each cushion style since a day, and how many of them arrived broken. Voided ones are
 * left out.
 *
 * @param db the database
 * @param since first day packed
 */
export async function brokenByStyle(
  db: Database,
  since: Day,
): Promise<Readonly<Record<CushionStyle, BrokenOfStyle>>> {
  const rows = await db.$queryRaw<{ style: string; parcels: bigint; broken: bigint }[]>`
    SELECT "style", COUNT(*) AS "parcels", SUM("brokenOn" IS NOT NULL) AS "broken" FROM "Parcel"
    WHERE "packedOn" >= ${since} AND "voidedAt" IS NULL GROUP BY "style"`;
  const of = (style: CushionStyle): BrokenOfStyle => {
    const row = rows.find((each) => each.style === style);
    return { parcels: Number(row?.parcels ?? 0), broken: Number(row?.broken ?? 0) };
  };
  return Object.fromEntries(CUSHION_STYLES.map((style) => [style, of(style)])) as Record<
    CushionStyle,
    BrokenOfStyle
  >;
}
