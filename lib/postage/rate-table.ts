import type { WeightStep } from "#lib/postage/rate-card";
import { type MassUnit, type TypedMass, typedMeasure } from "#lib/postage/typed-measure";
import type { Measures } from "#lib/units/measures";
import { type MinorUnits, parseMoney } from "#lib/units/money";

/** A rate table as it was typed or pasted, or what can't be read of it. */
export type RateTable =
  | { readonly kind: "table"; readonly zones: readonly string[]; readonly steps: readonly WeightStep[] }
  | { readonly kind: "unreadable"; readonly problems: readonly string[] };

/** How the numbers of a table are meant. */
export type RateTableTerms = { readonly measures: Measures; readonly minorDigits: number };

type Read<T> = { readonly value: T } | { readonly problem: string };

const UNITS: ReadonlyMap<string, MassUnit> = new Map([
  ["oz", "oz"],
  ["ounce", "oz"],
  ["ounces", "oz"],
  ["lb", "lb"],
  ["lbs", "lb"],
  ["pound", "lb"],
  ["pounds", "lb"],
  ["g", "g"],
  ["gram", "g"],
  ["grams", "g"],
  ["kg", "kg"],
  ["kilo", "kg"],
  ["kilos", "kg"],
]);

/** What stands in a cell for which the carrier gives no price. */
const NO_PRICE = /^[-–—]?$/;

/**
 * Reads a rate table from text: a first row with the names of the zones (a word over the weights may be left out), then
 * a row for each weight step with its prices. Cells stand apart by tabs (as copied from a spreadsheet), semicolons, bars or two and more spaces. A cell left
 * empty or with a dash has no price.
 *
 * @param text rows, one a line; empty lines count for nothing
 * @param terms whose decimal comma, and digits of the currency after the point
 * @returns zones and steps in the order of the text, or one problem for each row that can't be read
 * @example readRateTable("up to\tNear\tFar\n8 oz\t4.60\t5.20", { measures: "imperial", minorDigits: 2 })
 *   // zones Near and Far, one step of 460 and 520 minor units
 */
export function readRateTable(text: string, terms: RateTableTerms): RateTable {
  const rows = text
    .split(/\r?\n/)
    .map((line, at) => ({ line: at + 1, cells: cellsOf(line) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const [head, ...body] = rows;
  if (head === undefined || body.length === 0) {
    return unreadable([
      "A table has a first row with the zones and at least one row such as “8 oz  4.60  5.20”. Paste it whole.",
    ]);
  }
  const isHeadWithoutCorner = head.cells.length === (body[0]?.cells.length ?? 0) - 1;
  const zones = isHeadWithoutCorner ? head.cells : head.cells.slice(1);
  if (zones.length === 0 || zones.some((zone) => zone === "")) {
    return unreadable([
      `Row ${head.line}: the first row names a zone over each column of prices, such as “up to  Near  Far”.`,
    ]);
  }
  const steps: WeightStep[] = [];
  const problems: string[] = [];
  for (const { line, cells } of body) {
    const read = stepOf(cells, zones, terms);
    if ("problem" in read) problems.push(`Row ${line}: ${read.problem}`);
    else steps.push(read.value);
  }
  return problems.length > 0 ? unreadable(problems) : { kind: "table", zones, steps };
}

function unreadable(problems: readonly string[]): RateTable {
  return { kind: "unreadable", problems };
}

/** Tabs keep empty cells; spaces can't. */
function cellsOf(line: string): string[] {
  const separator = ["\t", ";", "|"].find((each) => line.includes(each)) ?? / {2,}/;
  return line.split(separator).map((cell) => cell.trim());
}

function stepOf(cells: readonly string[], zones: readonly string[], terms: RateTableTerms): Read<WeightStep> {
  const upTo = massOf(cells[0] ?? "", terms.measures);
  if (upTo === null) {
    return { problem: `“${cells[0]}” is no weight. Type a number and oz, lb, g or kg, such as 8 oz.` };
  }
  if (cells.length > zones.length + 1) {
    return {
      problem: `it has ${cells.length - 1} prices for ${zones.length} zones. Give each price a zone in the first row.`,
    };
  }
  const prices: (MinorUnits | null)[] = [];
  for (const [at, zone] of zones.entries()) {
    const typed = cells[at + 1] ?? "";
    const money = NO_PRICE.test(typed) ? null : parseMoney(typed, terms.minorDigits);
    if (money?.kind === "unreadable") {
      return { problem: `“${typed}” for ${zone} is no price. Type it like 4.60, or leave it empty.` };
    }
    prices.push(money === null ? null : money.minor);
  }
  return { value: { upTo, prices } };
}

function massOf(text: string, measures: Measures): TypedMass | null {
  const match = /^(?:up to\s+)?(.*?)\s*([a-z]+)\.?$/i.exec(text.trim());
  const unit = UNITS.get((match?.[2] ?? "").toLowerCase());
  return match === null || unit === undefined ? null : typedMeasure(match[1] ?? "", unit, measures);
}
