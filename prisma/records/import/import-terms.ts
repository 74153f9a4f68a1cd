import { instantOfTime, shopDay } from "#lib/units/instant";
import type { ImportConnection } from "./import-connection";

type ShopRow = { timeZone: string; minorDigits: number; defaultStyle: string };

/**
 * What of the shop's settings an import needs.
 *
 * @param db the import's connection
 * @param now instant of the import
 * @returns time zone, digits of the currency, usual style, and today
 * @throws Error before the shop is set up
 */
export function importTerms(db: ImportConnection, now: string) {
  const shop = db
    .prepare<[], ShopRow>(`SELECT "timeZone", "minorDigits", "defaultStyle" FROM "Shop" WHERE "id" = 'shop'`)
    .get();
  if (shop === undefined) throw new Error("The shop is not set up yet: save it under Setup first");
  return { ...shop, now, today: shopDay(instantOfTime(Date.parse(now)), shop.timeZone) };
}
