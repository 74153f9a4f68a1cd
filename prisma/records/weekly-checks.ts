import { randomUUID } from "node:crypto";
import {
  type ShopTerms,
  type SupplyOutlookInput,
  type WeeklyCheck,
  weeklyCheck,
} from "#lib/replenishment/weekly-check";
import { amount } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import { instant, shopDay } from "#lib/units/instant";
import type { UseUnit } from "#lib/units/use-unit";
import { type Database, inTransaction } from "../client";
import { goalOf } from "./buying-terms";
import { closedSpansOf } from "./closed-spans";
import { forecastOn } from "./forecasts";
import { shopOf } from "./shop";
import { type DeliveryRecord, supplierDeliveries } from "./supplier-deliveries";
import { supplyHistories } from "./supply-histories";

/**
 * What the weekly check needs, as it stood at the end of a day: nothing effective later is in it.
 *
 * @param today the day of the check
 * @returns the inputs, or null before the shop is set up
 */
export async function checkInputs(
  db: Database,
  today: Day,
): Promise<{ inputs: SupplyOutlookInput[]; terms: ShopTerms } | null> {
  const shop = await shopOf(db);
  if (shop === null) return null;
  const [supplies, histories, forecast, counts, lines, offers, deliveries, first, closed] = await Promise.all(
    [
      db.supply.findMany({ where: { retired: false }, orderBy: [{ position: "asc" }, { name: "asc" }] }),
      supplyHistories(db, today),
      forecastOn(db, today),
      db.count.groupBy({
        by: ["supplyId"],
        where: { countedDay: { lte: today } },
        _max: { countedAt: true },
      }),
      db.purchaseLine.findMany({
        where: {
          purchase: { state: "placed", placedOn: { lte: today } },
          AND: [
            { OR: [{ closedOn: null }, { closedOn: { gt: today } }] },
            { OR: [{ restSince: null }, { restSince: { lte: today } }] },
          ],
        },
      }),
      db.offer.findMany({
        where: { retired: false, soldOut: false, supplier: { retired: false } },
        include: { supplier: true, breaks: { orderBy: { fromPacks: "asc" } } },
        orderBy: { id: "asc" },
      }),
      supplierDeliveries(db, today),
      db.parcelDay.findFirst({ orderBy: { day: "asc" }, select: { day: true } }),
      closedSpansOf(db),
    ],
  );
  const countedAts = new Map(counts.map((count) => [count.supplyId, count._max.countedAt]));
  const inputs = supplies.map((supply): SupplyOutlookInput => {
    const history = histories.get(supply.id);
    const countedAt = countedAts.get(supply.id) ?? null;
    return {
      supplyId: supply.id,
      name: supply.name,
      unit: supply.useUnit as UseUnit,
      onHand: countedAt === null ? null : (history?.onHand ?? amount(0)),
      countedOn: countedAt === null ? null : shopDay(instant(countedAt), shop.timeZone),
      onOrder: lines
        .filter((line) => line.supplyId === supply.id)
        .map((line) => ({
          amount: amount(Number(line.packAmount) * line.packs),
          expectedOn: day(line.expectedOn),
        })),
      useByDay: history?.useByDay ?? [],
      firstDay: first === null ? null : day(first.day),
      forecast: forecast?.supplies.get(supply.id) ?? null,
      goal:
        supply.goal === null || supply.goalPerMille === null
          ? null
          : { kind: goalOf(supply.goal), level: supply.goalPerMille / 1000 },
      offers: offers
        .filter((offer) => offer.supplyId === supply.id)
        .map((offer) => ({
          offerId: offer.id,
          supplierId: offer.supplierId,
          supplierName: offer.supplier.name,
          delivery: deliveryOf(deliveries, offer.supplierId),
          pack: offer.pack,
          packAmount: amount(Number(offer.packAmount)),
          priceMinor: offer.priceMinor,
          breaks: offer.breaks.map((row) => ({ fromPacks: row.fromPacks, priceMinor: row.priceMinor })),
          breakKind: offer.breakKind === "incremental" ? ("incremental" as const) : ("all-units" as const),
          volumeMl: offer.volumeMl,
          mostPacksAMonth: offer.mostPacksAMonth,
        })),
    };
  });
  const terms: ShopTerms = {
    weekStartsOn: shop.weekStartsOn,
    reviewDays: shop.reviewDays,
    goal: { kind: shop.goal, level: shop.servicePerMille / 1000 },
    coverWeeks: shop.coverWeeks,
    closed: closed.map((span) => ({ fromDay: day(span.fromDay), toDay: day(span.toDay) })),
    currency: shop.currency,
    minorDigits: shop.minorDigits,
  };
  return { inputs, terms };
}

function deliveryOf(deliveries: ReadonlyMap<string, DeliveryRecord>, supplierId: string): DeliveryRecord {
  const found = deliveries.get(supplierId);
  if (found === undefined) throw new RangeError(`The supplier ${supplierId} of an offer is not in use`);
  return found;
}

/** The weekly check as of a day, or null before the shop is set up. */
export async function weeklyCheckOn(db: Database, today: Day): Promise<WeeklyCheck | null> {
  const found = await checkInputs(db, today);
  return found === null ? null : weeklyCheck(found.inputs, found.terms, today);
}

/** Keeps a check as it was said, to be held against what happens. Said again on its day, it replaces itself. */
export async function sayWeeklyCheck(db: Database, check: WeeklyCheck, now: string): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.weeklyCheck.deleteMany({ where: { day: check.day } });
    const id = randomUUID();
    await tx.weeklyCheck.create({ data: { id, day: check.day, saidAt: now, finding: check.finding } });
    await tx.weeklyCheckRow.createMany({
      data: check.rows.map((row, position) => ({
        checkId: id,
        supplyId: row.supplyId,
        position,
        onHand: row.onHand === null ? null : BigInt(row.onHand),
        onOrder: BigInt(row.onOrder),
        usePerWeek: row.usePerWeek === null ? null : BigInt(Math.round(row.usePerWeek)),
        method: row.method,
        reorderPoint: row.reorderPoint === null ? null : BigInt(Math.round(row.reorderPoint)),
        runOutDate: row.runOutDate,
        orderByDate: row.orderByDate,
        offerId: row.offerId,
        suggestedPacks: row.suggestedPacks,
        action: row.action,
        sentence: row.sentence,
      })),
    });
  });
}
