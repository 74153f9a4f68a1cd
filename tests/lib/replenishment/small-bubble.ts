import type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/weekly-check";
import { weeklyCheck } from "#lib/replenishment/weekly-check";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { onTime } from "./on-time";
import { TERMS } from "./shop-terms";
import { supplyForecast } from "./supply-forecast";

// All figures are invented.
export const today = day("2026-11-25");
const firstDay = day("2026-06-01");
export const roll = {
  offerId: "roll-175",
  supplierId: "marram",
  supplierName: "Marram",
  delivery: onTime(9),
  pack: "roll of 175 ft",
  packAmount: amountOfUnits(175),
  priceMinor: 2600,
  breaks: [],
  breakKind: "all-units",
  volumeMl: null,
} as const;

/** Steady use: the same every Tuesday. */
export function everyTuesday(units: number) {
  return Array.from({ length: 25 }, (_, week) => ({
    day: addDays(day("2026-06-02"), 7 * week),
    amount: amountOfUnits(units),
  }));
}

export const bubble: SupplyOutlookInput = {
  supplyId: "small-bubble",
  name: "Small bubble",
  unit: "square-foot",
  onHand: amountOfUnits(60),
  countedOn: day("2026-11-20"),
  onOrder: [],
  useByDay: everyTuesday(21),
  firstDay,
  forecast: supplyForecast(21),
  offers: [roll],
  goal: null,
};

/** The check’s row of small bubble, changed as the test wants. */
export function rowOf(more: Partial<SupplyOutlookInput>, at: Day = today, shop: Partial<ShopTerms> = {}) {
  const [row] = weeklyCheck([{ ...bubble, ...more }], { ...TERMS, ...shop }, at).rows;
  if (row === undefined) throw new RangeError("rowOf requires a row, got none");
  return row;
}
