import type { SeasonProfile } from "#lib/forecast/season-profile";
import { firstOrigin } from "#lib/forecast/shop/plainest-first";
import { shopForecast } from "#lib/forecast/shop/shop-forecast";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import type { SubjectForecast, SubjectPast, SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import type { ShopWeek } from "#lib/forecast/shop-weeks";
import type { Day } from "#lib/units/day";
import type { ForecastSpan, forecastInputs } from "./forecast-inputs";

/** What a forecast is about. The shop's own id is "shop". */
export type ForecastSubject = { readonly kind: "shop" | "item-type" | "supply"; readonly id: string };

/** A week of the past as the Outlook screen shows it. */
export type PastWeek = {
  readonly weekStart: Day;
  readonly recorded: number;
  /** as it would have been by today's recipes and by what the counts found */
  readonly restated: number;
  /** mostly closed, and left out of the forecast */
  readonly closed: boolean;
};

/** What stands behind a subject's forecast. */
export type PartPast = SubjectPast & { readonly weeks: readonly PastWeek[] };

/** One subject of a forecast, worked out. */
export type ForecastPart = {
  readonly subject: ForecastSubject;
  readonly coming: SubjectForecast | SupplyForecast;
  readonly past: PartPast;
};

/** What all subjects share. */
export type ForecastFrame = { readonly season: SeasonProfile; readonly weeksSeen: number };

/**
 * Works a forecast out, subject by subject.
 *
 * @param inputs what the records know
 * @param span the weeks that it looks at
 * @returns the parts one after the other; null in between, so that the caller can let others have their turn; in the
 * end what all share
 */
export function* forecastParts(
  { history, supplies }: ReturnType<typeof forecastInputs>,
  span: ForecastSpan,
): Generator<ForecastPart | null, ForecastFrame> {
  const ground = shopGround(history);
  for (let count = firstOrigin(ground.weeks.length); count <= ground.weeks.length; count += 1) {
    if (ground.types.length > 0) ground.levelAfter(count);
    yield null;
  }
  const histories = supplies.map((supply) => supply.history);
  const forecast = shopForecast(history, histories, ground);
  if (forecast.parcels !== null) {
    const counts = span.weeks.map((_, week) =>
      history.itemTypes.reduce((sum, type) => sum + (type.parcels[week] ?? 0), 0),
    );
    yield {
      subject: { kind: "shop", id: "shop" },
      coming: forecast.parcels.coming,
      past: { ...forecast.parcels.past, weeks: pastWeeks(span.weeks, counts, counts) },
    };
  }
  for (const [index, { id, outlook }] of forecast.itemTypes.entries()) {
    const pieces = history.itemTypes[index]?.pieces ?? [];
    const weeks = pastWeeks(span.weeks, pieces, pieces);
    yield {
      subject: { kind: "item-type", id },
      coming: outlook.coming,
      past: { ...outlook.past, weeks },
    };
  }
  for (const supply of supplies) {
    const outlook = forecast.supply(supply.history);
    if (outlook === null) continue;
    const { id, used } = supply.history;
    yield {
      subject: { kind: "supply", id },
      coming: { ...outlook.coming, correction: supply.correction },
      past: { ...outlook.past, weeks: pastWeeks(span.weeks, supply.recorded, used) },
    };
  }
  return { season: ground.season, weeksSeen: ground.weeks.length };
}

function pastWeeks(
  weeks: readonly ShopWeek[],
  recorded: readonly number[],
  restated: readonly number[],
): PastWeek[] {
  return weeks.map(({ weekStart, closed }, week) => ({
    weekStart,
    recorded: recorded[week] ?? 0,
    restated: restated[week] ?? 0,
    closed,
  }));
}
