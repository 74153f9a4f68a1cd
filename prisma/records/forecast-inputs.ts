import { countCorrection } from "#lib/forecast/count-correction";
import type { ItemTypeHistory, ShopHistory, SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import { type ShopWeek, shopWeeks } from "#lib/forecast/shop-weeks";
import { weeklyUse } from "#lib/forecast/weekly-use";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day, daysBetween, weekStart } from "#lib/units/day";
import type { ForecastRows, PackedRow, SupplyRows } from "./forecast-rows";
import { type ItemTypePacking, itemTypePacking } from "./item-type-packing";
import { recipeDifferences } from "./recipe-differences";

const DAYS_A_WEEK = 7;
const MG_A_GRAM = 1_000;

/** From which day to which a forecast looks back. */
export type ForecastSpan = {
  /** the first day that no longer counts */
  readonly until: Day;
  /** weeks that are over */
  readonly weeks: readonly ShopWeek[];
};

/** A supply with what its forecast is made from. */
export type SupplyInput = {
  readonly history: SupplyUseHistory;
  readonly correction: SupplyForecast["correction"];
  /** recorded use a week, use units, before any correction */
  readonly recorded: readonly number[];
};

/**
 * How far back a forecast looks: to the start of the running week, or while no whole week is over up to and with today.
 *
 * @param rows first day, closed days and the weekday that weeks start on
 * @param today the day of the forecast
 */
export function forecastSpan(
  rows: Pick<ForecastRows, "firstDay" | "calendar"> & { readonly shop: { readonly weekStartsOn: number } },
  today: Day,
): ForecastSpan {
  const { firstDay, calendar, shop } = rows;
  const weeks = shopWeeks({ firstDay, today, weekStartsOn: shop.weekStartsOn, calendar });
  const isWhole = weeks.some((week) => !week.partial && !week.closed);
  return isWhole
    ? { until: weekStart(today, shop.weekStartsOn), weeks }
    : { until: addDays(today, 1), weeks: [] };
}

/**
 * What the forecasting functions need, from the rows.
 *
 * @param rows all rows before the span's end
 * @param span how far back the forecast looks
 * @param today the day of the forecast
 * @param asIf an item type as if it were packed in another style
 * @returns the shop's history and each supply's
 */
export function forecastInputs(
  rows: ForecastRows,
  span: ForecastSpan,
  today: Day,
  asIf: { readonly itemTypeId: string; readonly style: CushionStyle } | null = null,
): { readonly history: ShopHistory; readonly supplies: readonly SupplyInput[] } {
  const { shop, firstDay, calendar, events } = rows;
  const weekOf = weekFinder(span.weeks);
  const packings = new Map(
    rows.itemTypes.map((type) => {
      const style = asIf?.itemTypeId === type.id ? asIf.style : null;
      return [type.id, itemTypePacking(rows, type.id, span.until, style)];
    }),
  );
  const differences = recipeDifferences(rows, packings, { today, weeks: span.weeks.length, weekOf });
  const history: ShopHistory = {
    today,
    weekStartsOn: shop.weekStartsOn,
    calendar,
    weeks: span.weeks,
    firstDays: span.weeks.length > 0 || firstDay === null ? 0 : daysBetween(firstDay, today) + 1,
    itemTypes: rows.itemTypes
      .map((type) => itemTypeHistory(rows, type, { weeks: span.weeks.length, weekOf }))
      .filter((type) => packings.get(type.id)?.isKnown === true),
    events,
    guessedParcels: shop.guessedParcels,
    serviceLevel: shop.servicePerMille / 1000,
  };
  const supplies = rows.supplies.map((supply) =>
    supplyInput(supply, { rows, span, packings, restated: differences.get(supply.id) }),
  );
  return { history, supplies };
}

/** Which of the shop's weeks a day lies in; none before the first or after the last. */
function weekFinder(weeks: readonly ShopWeek[]): (of: Day) => number | null {
  const first = weeks[0]?.weekStart;
  return (of) => {
    if (first === undefined || of < first) return null;
    const index = Math.floor(daysBetween(first, of) / DAYS_A_WEEK);
    return index < weeks.length ? index : null;
  };
}

function itemTypeHistory(
  rows: ForecastRows,
  type: ForecastRows["itemTypes"][number],
  { weeks, weekOf }: { readonly weeks: number; readonly weekOf: (of: Day) => number | null },
): ItemTypeHistory {
  const parcels = new Array<number>(weeks).fill(0);
  const pieces = new Array<number>(weeks).fill(0);
  const own = rows.packed.filter((row) => row.itemTypeId === type.id);
  for (const row of own) {
    const week = weekOf(row.day);
    if (week === null) continue;
    parcels[week] = (parcels[week] ?? 0) + row.parcels;
    pieces[week] = (pieces[week] ?? 0) + row.pieces;
  }
  const sizes = rows.sizes.get(type.id);
  return {
    id: type.id,
    parcels,
    pieces,
    firstDays: weeks > 0 ? { parcels: 0, pieces: 0 } : counted(own),
    piecesAtOnce: sizes === undefined || sizes.pieces === 0 ? 1 : sizes.squares / sizes.pieces,
    massGrams: type.massMg === null ? null : type.massMg / MG_A_GRAM,
  };
}

function counted(rows: readonly PackedRow[]): { readonly parcels: number; readonly pieces: number } {
  return {
    parcels: rows.reduce((sum, row) => sum + row.parcels, 0),
    pieces: rows.reduce((sum, row) => sum + row.pieces, 0),
  };
}

type SupplyFrame = {
  readonly rows: ForecastRows;
  readonly span: ForecastSpan;
  readonly packings: ReadonlyMap<string, ItemTypePacking>;
  /** use units a week that today's recipes would have taken more (or less) */
  readonly restated: readonly number[] | undefined;
};

function supplyInput(supply: SupplyRows, { rows, span, packings, restated }: SupplyFrame): SupplyInput {
  const { useByDay, countDifferences, leadTimesDays } = supply;
  const correction = countCorrection(useByDay, countDifferences, addDays(span.until, -1));
  const factor = correction.kind === "corrected" ? correction.factor : 1;
  const recorded = weeklyUse(useByDay, span.weeks).map((week) => unitsOf(week.amount));
  const leadTime = leadTimesDays.length === 0 ? ASSUMED_LEAD_TIME_DAYS : Math.min(...leadTimesDays);
  const perPiece = new Map(
    [...packings].flatMap(([typeId, { bill }]) => {
      const units = bill.get(supply.id) ?? 0;
      return units > 0 ? [[typeId, units] as const] : [];
    }),
  );
  return {
    correction,
    recorded,
    history: {
      id: supply.id,
      used: recorded.map((units, week) => factor * Math.max(0, units + (restated?.[week] ?? 0))),
      firstDaysUsed:
        span.weeks.length > 0 ? 0 : factor * useByDay.reduce((sum, use) => sum + unitsOf(use.amount), 0),
      perPiece,
      perUse: perUse(supply.id, packings),
      whole: supply.unit === "each",
      horizonWeeks: Math.max(1, Math.round((leadTime + rows.shop.reviewDays) / DAYS_A_WEEK)),
    },
  };
}

/** Taken where no offer says how long a delivery takes; common practice, no source. */
const ASSUMED_LEAD_TIME_DAYS = 7;

/** What one parcel takes as a rule: the mean of what each takes, weighed by what it takes. */
function perUse(supplyId: string, packings: ReadonlyMap<string, ItemTypePacking>): number | null {
  let sum = 0;
  let squares = 0;
  for (const packing of packings.values()) {
    const moments = packing.momentsOf(supplyId);
    sum += moments.sum;
    squares += moments.squares;
  }
  return sum > 0 ? squares / sum : null;
}
