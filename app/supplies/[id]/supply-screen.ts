import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { instant, shopDay } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import { movementsOf, supplyWeeksOf } from "#prisma/records/movements";
import { openPurchaseLines } from "#prisma/records/purchases";
import type { Shop } from "#prisma/records/shop";
import { offerPricesOf, offersOf, suppliersOf } from "#prisma/records/suppliers";
import { stockOf, supplyOf } from "#prisma/records/supplies";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { ledgerRows } from "./ledger-rows";
import { weeksOfUse } from "./use-weeks";

const WEEKS_SHOWN = 26;
const LINES_SHOWN = 25;

/** All that the screen of one supply shows; null where there is no such supply. */
export type SupplyScreen = NonNullable<Awaited<ReturnType<typeof supplyScreen>>>;

/**
 * Reads one supply with its stock, weeks, ledger, offers and what is on order.
 *
 * @param db the open database
 * @param shop the shop
 * @param question which supply, on which day, and the ledger from which line on backwards
 * @returns the screen, or null where there is no such supply
 */
export async function supplyScreen(
  db: Database,
  shop: Shop,
  question: { readonly supplyId: string; readonly today: Day; readonly before: number | undefined },
) {
  const { supplyId, today, before } = question;
  const supply = await supplyOf(db, supplyId);
  if (supply === null) return null;
  const [stocks, weeks, [newest], lines, offers, suppliers, onOrder, check] = await Promise.all([
    stockOf(db),
    supplyWeeksOf(db, supplyId, shop.weekStartsOn),
    movementsOf(db, supplyId, { limit: 1 }),
    movementsOf(db, supplyId, { limit: LINES_SHOWN, ...(before === undefined ? {} : { before }) }),
    offersOf(db, { supplyId }),
    suppliersOf(db),
    openPurchaseLines(db, { supplyId }),
    weeklyCheckOn(db, today),
  ]);
  const prices = await Promise.all(
    offers.map(async (offer) => [offer.id, await offerPricesOf(db, offer.id)] as const),
  );
  const stock = stocks.find((row) => row.supplyId === supplyId);
  const countedAt = stock?.countedAt ?? null;
  const checkRow = check?.rows.find((row) => row.supplyId === supplyId);
  const oldest = lines.length === LINES_SHOWN ? lines.at(-1) : undefined;
  return {
    supply,
    onHand: stock === undefined || countedAt === null ? null : stock.amount,
    countedDay: countedAt === null ? null : shopDay(instant(countedAt), shop.timeZone),
    unitCost: stock?.unitCost ?? null,
    usePerWeek: checkRow?.usePerWeek == null ? null : amount(Math.round(checkRow.usePerWeek)),
    sentence: checkRow?.sentence ?? null,
    weeks: weeksOfUse(weeks, today, shop.weekStartsOn, WEEKS_SHOWN),
    /** Id of the newest line of the ledger, 0 where there is none. */
    lastLine: newest?.id ?? 0,
    ledger: ledgerRows(lines, supply.useUnit),
    olderHref: oldest === undefined ? null : `/supplies/${supplyId}?before=${oldest.id}#ledger`,
    offers,
    /** What each offer's pack was offered at, oldest first. */
    offerPrices: new Map(prices),
    suppliers,
    onOrder,
  };
}

/** Value per use unit of a pack's price, for "13.8 c a ft": 1/10,000 minor unit. */
export function packUnitCost(priceMinor: number, packAmount: number): number {
  return (priceMinor * 10_000 * AMOUNT_PER_UNIT) / packAmount;
}
