import { type UseUnit, unitWord } from "#lib/units/use-unit";

/** What a forecast counts in: parcels of the shop, pieces of an item type, use units of a supply. */
export type QuantityUnit = "parcel" | UseUnit;

/** From here on an estimate is shown whole, from the other on in tens: more digits of it can't be known. */
const WHOLE_FROM = 20;
const TENS_FROM = 1_000;

/**
 * An estimate rounded to what can be known of it, alike in sentences, tables and charts: in tens from 1,000, whole
 * from 20, below that to one decimal, and to the first digit below a tenth.
 *
 * @param value estimate, from 0
 * @example roundedEstimate(1912) // 1910
 */
export function roundedEstimate(value: number): number {
  if (value >= TENS_FROM) return Math.round(value / 10) * 10;
  if (value >= WHOLE_FROM) return Math.round(value);
  return Number(value > 0 && value < 0.1 ? value.toPrecision(1) : value.toFixed(1));
}

/**
 * A rounded estimate as a figure.
 *
 * @param value estimate, from 0
 * @returns "1,910", "685", "7.3", "0.04"
 * @example figure(1912) // "1,910"
 */
export function figure(value: number): string {
  return roundedEstimate(value).toLocaleString("en-US", { maximumSignificantDigits: 12 });
}

/**
 * An estimate with its unit.
 *
 * @param value estimate, from 0
 * @param unit what is counted
 * @returns words; a number alone for what is counted by itself
 * @example quantity(685.2, "sheet") // "685 sheets"
 */
export function quantity(value: number, unit: QuantityUnit): string {
  return withWord(figure(value), unit, value);
}

/**
 * From one estimate to another, with the unit once.
 *
 * @param low lower end
 * @param high upper end, not below
 * @param unit what is counted
 * @returns words; one figure where both ends are the same
 * @example quantityRange(1912, 2297, "sheet") // "1,910 to 2,300 sheets"
 */
export function quantityRange(low: number, high: number, unit: QuantityUnit): string {
  const [from, to] = [figure(low), figure(high)];
  return withWord(from === to ? to : `${from} to ${to}`, unit, high);
}

/**
 * What was recorded, with its unit: whole from 20, below that to two decimals.
 *
 * @param value a booked quantity, from 0
 * @param unit what is counted
 * @example bookedQuantity(1912, "sheet") // "1,912 sheets"
 */
export function bookedQuantity(value: number, unit: QuantityUnit): string {
  return withWord(bookedFigure(value), unit, value);
}

/** A booked quantity without its unit, for tables. */
export function bookedFigure(value: number): string {
  const rounded = value >= WHOLE_FROM ? Math.round(value) : Number(value.toFixed(2));
  return rounded.toLocaleString("en-US");
}

/**
 * The unit as the name of an axis or a column.
 *
 * @param unit what is counted
 * @example unitTitle("square-foot") // "sq ft"
 */
export function unitTitle(unit: QuantityUnit): string {
  if (unit === "parcel") return "parcels";
  return unitWord(unit, 2) || "number";
}

function withWord(text: string, unit: QuantityUnit, count: number): string {
  const word = wordOf(unit, count);
  return word === "" ? text : `${text} ${word}`;
}

function wordOf(unit: QuantityUnit, count: number): string {
  // One digit decides: 0.97 is shown as 1.
  const shown = Number(count.toFixed(1));
  if (unit === "parcel") return shown > 0 && shown <= 1 ? "parcel" : "parcels";
  return unitWord(unit, shown);
}
