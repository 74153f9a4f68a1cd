import { type ClosedCalendar, closedCalendar } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { DayUse } from "#lib/forecast/weekly-use";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { addDays, type Day, day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";
import type { Database } from "../client";
import { closedSpansOf } from "./closed-spans";
import { plannedEventsOf } from "./planned-events";
import { recipesOf } from "./recipes";
import type { Shop } from "./shop";
import { supplyHistories } from "./supply-histories";

/** Parcels of a day, an item type, a style and a carton; nothing unusual. */
export type PackedRow = {
  readonly day: Day;
  readonly itemTypeId: string;
  readonly style: string;
  /** empty where none of the list was taken */
  readonly cartonId: string;
  /** that the item type led */
  readonly parcels: number;
  readonly pieces: number;
};

/** How many pieces of an item type go into a parcel: how often it was in one, the sum and the sum of squares. */
export type PieceSizes = { readonly times: number; readonly pieces: number; readonly squares: number };

/** What a supply's forecast is made from. */
export type SupplyRows = {
  readonly id: string;
  readonly unit: UseUnit;
  /** oldest first */
  readonly useByDay: readonly DayUse[];
  readonly countDifferences: readonly DayUse[];
  /** of those who offer it */
  readonly leadTimesDays: readonly number[];
};

/** All rows that a shop's forecast is made from. */
export type ForecastRows = {
  readonly shop: Pick<
    Shop,
    "weekStartsOn" | "reviewDays" | "servicePerMille" | "guessedParcels" | "defaultStyle"
  >;
  /** first day with a parcel; null without one */
  readonly firstDay: Day | null;
  readonly calendar: ClosedCalendar;
  readonly events: readonly PlannedEvent[];
  readonly itemTypes: readonly { readonly id: string; readonly massMg: number | null }[];
  readonly recipes: readonly RecipeVersion[];
  readonly packed: readonly PackedRow[];
  readonly sizes: ReadonlyMap<string, PieceSizes>;
  readonly supplies: readonly SupplyRows[];
};

/** Parcels older than this say nothing of how many pieces go into one today. */
const DAYS_OF_SIZES = 371;

/**
 * Reads all that a forecast is made from.
 *
 * @param db the database
 * @param shop the shop
 * @param until the first day that no longer counts
 * @returns rows up to the day before
 */
export async function forecastRows(db: Database, shop: Shop, until: Day): Promise<ForecastRows> {
  const last = addDays(until, -1);
  const [first, closed, events, itemTypes, recipes, packed, sizes, supplies, histories, offers] =
    await Promise.all([
      db.parcelDay.findFirst({ orderBy: { day: "asc" }, select: { day: true } }),
      closedSpansOf(db),
      plannedEventsOf(db),
      db.itemType.findMany({
        where: { retired: false },
        orderBy: [{ position: "asc" }, { id: "asc" }],
        select: { id: true, massMg: true },
      }),
      recipesOf(db),
      packedRows(db, until),
      pieceSizes(db, until),
      db.supply.findMany({ where: { retired: false }, orderBy: { id: "asc" } }),
      supplyHistories(db, last),
      db.offer.findMany({
        where: { retired: false, supplier: { retired: false } },
        select: { supplyId: true, supplier: { select: { leadTimeDays: true } } },
      }),
    ]);
  return {
    shop,
    firstDay: first === null ? null : day(first.day),
    calendar: closedCalendar(closed.map((span) => ({ fromDay: day(span.fromDay), toDay: day(span.toDay) }))),
    events,
    itemTypes,
    recipes,
    packed,
    sizes,
    supplies: supplies.map((supply) => ({
      id: supply.id,
      unit: supply.useUnit as UseUnit,
      useByDay: histories.get(supply.id)?.useByDay ?? [],
      countDifferences: histories.get(supply.id)?.countDifferences ?? [],
      leadTimesDays: offers
        .filter((offer) => offer.supplyId === supply.id)
        .map((offer) => offer.supplier.leadTimeDays),
    })),
  };
}

async function packedRows(db: Database, until: Day): Promise<PackedRow[]> {
  const rows = await db.$queryRaw<Record<"day" | "itemTypeId" | "style" | "cartonId" | "counts", string>[]>`
    SELECT "day", "itemTypeId", "style", "cartonId", SUM("parcels") || ' ' || SUM("pieces") AS "counts"
    FROM "ParcelDay" WHERE NOT "unusual" AND "day" < ${until}
    GROUP BY "day", "itemTypeId", "style", "cartonId" ORDER BY "day"`;
  return rows.map(({ counts, ...row }) => {
    const [parcels = 0, pieces = 0] = counts.split(" ").map(Number);
    return { ...row, day: day(row.day), parcels, pieces };
  });
}

async function pieceSizes(db: Database, until: Day): Promise<Map<string, PieceSizes>> {
  const from = addDays(until, -DAYS_OF_SIZES);
  const rows = await db.$queryRaw<Record<"id" | "counts", string>[]>`
    SELECT pp."itemTypeId" AS "id",
      COUNT(*) || ' ' || SUM(pp."pieces") || ' ' || SUM(pp."pieces" * pp."pieces") AS "counts"
    FROM "Parcel" p JOIN "ParcelPiece" pp ON pp."parcelId" = p."id"
    WHERE p."voidedAt" IS NULL AND NOT p."unusual" AND p."packedOn" >= ${from} AND p."packedOn" < ${until}
    GROUP BY pp."itemTypeId"`;
  return new Map(
    rows.map(({ id, counts }) => {
      const [times = 0, pieces = 0, squares = 0] = counts.split(" ").map(Number);
      return [id, { times, pieces, squares }];
    }),
  );
}
