import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import type { ForecastRows, PackedRow } from "#prisma/records/forecast-rows";

/** A Monday, and twelve weeks later. */
export const FIRST_MONDAY = day("2026-08-31");
export const TODAY = day("2026-11-25");

type Takes = Readonly<Record<string, number>>;

/** An invented recipe: use units by supply for a piece and once a parcel, and a carton. */
export function recipe(
  id: string,
  of: {
    readonly style?: RecipeVersion["style"];
    readonly from?: string;
    readonly piece?: Takes;
    readonly parcel?: Takes;
    readonly cartons?: RecipeVersion["cartons"];
  },
): RecipeVersion {
  const steps = (takes: Takes, per: "piece" | "parcel") =>
    Object.entries(takes).map(([supplyId, units], position) => ({
      id: `${id} ${per} ${supplyId}`,
      position,
      words: "",
      supplyId,
      amount: amountOfUnits(units),
      typedValue: String(units),
      typedUnit: "",
      per,
    }));
  return {
    id,
    itemTypeId: "mug",
    style: of.style ?? "paper",
    effectiveFrom: day(of.from ?? "2026-01-01"),
    steps: [...steps(of.piece ?? {}, "piece"), ...steps(of.parcel ?? {}, "parcel")],
    cartons: of.cartons ?? [{ upTo: 4, supplyId: "carton-8" }],
  };
}

/** Two parcels with three mugs on a day. */
export function packed(on: Day, changes: Partial<PackedRow> = {}): PackedRow {
  return {
    day: on,
    itemTypeId: "mug",
    style: "paper",
    cartonId: "carton-8",
    parcels: 2,
    pieces: 3,
    ...changes,
  };
}

/** Twelve weeks of the same parcels, each Tuesday, and what they used of paper. */
export function rows(changes: Partial<ForecastRows> = {}): ForecastRows {
  const tuesdays = Array.from({ length: 12 }, (_, week) => addDays(FIRST_MONDAY, 7 * week + 1));
  return {
    shop: {
      weekStartsOn: 1,
      reviewDays: 7,
      servicePerMille: 950,
      guessedParcels: null,
      defaultStyle: "paper",
    },
    firstDay: FIRST_MONDAY,
    calendar: [],
    events: [],
    itemTypes: [{ id: "mug", massMg: 400_000 }],
    recipes: [recipe("first", { piece: { paper: 10 }, parcel: { tape: 2 } })],
    packed: tuesdays.map((on) => packed(on)),
    sizes: new Map([["mug", { times: 24, pieces: 36, squares: 60 }]]),
    supplies: [
      {
        id: "paper",
        unit: "sheet",
        useByDay: tuesdays.map((on) => ({ day: on, amount: amountOfUnits(30) })),
        countDifferences: [],
        leadTimesDays: [9, 14],
      },
    ],
    ...changes,
  };
}
