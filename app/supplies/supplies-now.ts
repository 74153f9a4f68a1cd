import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { instant, shopDay } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import type { Shop } from "#prisma/records/shop";
import { type Stock, type Supply, stockOf, suppliesOf } from "#prisma/records/supplies";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";

/** The shelf as it stands: supplies, their stock and the use that This week reckons with. */
export type SuppliesNow = {
  readonly supplies: readonly Supply[];
  readonly stock: ReadonlyMap<string, Stock & { readonly countedDay: Day | null }>;
  readonly usePerWeek: ReadonlyMap<string, Amount>;
};

/**
 * Reads the shelf.
 *
 * @param db the open database
 * @param shop for its time zone
 * @param today the shop's day
 * @returns supplies in the order of the shelf, stock and use by supply
 */
export async function suppliesNow(db: Database, shop: Shop, today: Day): Promise<SuppliesNow> {
  const [supplies, stocks, check] = await Promise.all([
    suppliesOf(db),
    stockOf(db),
    weeklyCheckOn(db, today),
  ]);
  return {
    supplies,
    stock: new Map(
      stocks.map((stock) => [stock.supplyId, { ...stock, countedDay: countedDayOf(stock, shop) }]),
    ),
    usePerWeek: new Map(
      (check?.rows ?? []).flatMap((row) =>
        row.usePerWeek === null ? [] : [[row.supplyId, amount(Math.round(row.usePerWeek))] as const],
      ),
    ),
  };
}

/** The shop's day on which a supply was last counted; null where it never was. */
export function countedDayOf(stock: Stock, shop: Pick<Shop, "timeZone">): Day | null {
  return stock.countedAt === null ? null : shopDay(instant(stock.countedAt), shop.timeZone);
}
