import { massFromText } from "#lib/postage/measure-from-text";
import type { BeyondLastStep, WeightStep } from "#lib/postage/rate-card";
import { type PriceTerms, zonePrices } from "#lib/postage/zone-prices";
import type { Measures } from "#lib/units/measures";

/** A rate table as it was typed or pasted, or what can't be read of it. */
export type RateTable =
  | {
      readonly kind: "table";
      readonly zones: readonly string[];
      readonly steps: readonly WeightStep[];
      readonly beyond: BeyondLastStep;
    }
  | { readonly kind: "unreadable"; readonly problems: readonly string[] };

/** How the numbers of a table are meant. */
export type RateTableTerms = PriceTerms & { readonly measures: Measures };

/** How the row of further units begins. */
export const FURTHER_MARK = /^(?:each\s+)?further\s+/i;

/**
 * Reads a rate table from text: a first row with the names of the zones (a word over the weights may be left out), then
 * a row for each weight step with its prices; "each further 1 lb" may be the last one. Cells stand apart by tabs (as
 * copied from a spreadsheet), semicolons, bars or two and more spaces.
 *
 * @param text rows, one a line; empty lines count for nothing
 * @param terms whose decimal comma, digits of the currency after the point, and what an empty cell means
 * @returns zones and steps in the order of the text, or one problem for each row that can't be read
 * @example readRateTable("up to\tNear\tFar\n8 oz\t4.60\t5.20", { measures: "imperial", minorDigits: 2, blanks: "refused" })
 *   // zones Near and Far, one step of 460 and 520 minor units
 */
export function readRateTable(text: string, terms: RateTableTerms): RateTable {
  const read = tableRows(text);
  return "problem" in read ? unreadable([read.problem]) : tableOf(read.rows, read.zones, terms);
}

/**
 * The cells of a table as typed or pasted, not looked at yet.
 *
 * @param text rows, one a line; empty lines count for nothing
 * @returns the names over the prices and the rows under them with their lines, or what is wrong with the table
 */
export function tableRows(
  text: string,
): { readonly zones: readonly string[]; readonly rows: readonly Row[] } | { readonly problem: string } {
  const lines = text
    .split(/\r?\n/)
    .map((line, at) => ({ line: at + 1, cells: cellsOf(line) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const [head, ...rows] = lines;
  if (head === undefined || rows.length === 0) {
    return {
      problem:
        "A table has a first row with the zones and at least one row such as “8 oz  4.60  5.20”. Paste it whole.",
    };
  }
  const isHeadWithoutCorner = head.cells.length === (rows[0]?.cells.length ?? 0) - 1;
  const zones = isHeadWithoutCorner ? head.cells : head.cells.slice(1);
  if (zones.length === 0 || zones.some((zone) => zone === "")) {
    return {
      problem: `Row ${head.line}: the first row names a zone over each column of prices, such as “up to  Near  Far”.`,
    };
  }
  return { zones, rows };
}

type Row = { readonly line: number; readonly cells: readonly string[] };

function tableOf(body: readonly Row[], zones: readonly string[], terms: RateTableTerms): RateTable {
  const steps: WeightStep[] = [];
  const problems: string[] = [];
  let beyond: BeyondLastStep = { kind: "notCarried" };
  for (const { line, cells } of body) {
    const read = stepOf(cells, zones, terms);
    if ("problem" in read) problems.push(`Row ${line}: ${read.problem}`);
    else if (beyond.kind === "perFurther") {
      problems.push(`Row ${line}: it stands under the row of further units. Put that one last.`);
    } else if (read.isFurther) {
      beyond = { kind: "perFurther", each: read.step.upTo, prices: read.step.prices };
    } else steps.push(read.step);
  }
  return problems.length > 0 ? unreadable(problems) : { kind: "table", zones, steps, beyond };
}

function unreadable(problems: readonly string[]): RateTable {
  return { kind: "unreadable", problems };
}

/** Tabs keep empty cells; spaces can't. */
function cellsOf(line: string): string[] {
  const separator = ["\t", ";", "|"].find((each) => line.includes(each)) ?? / {2,}/;
  return line.split(separator).map((cell) => cell.trim());
}

function stepOf(
  cells: readonly string[],
  zones: readonly string[],
  terms: RateTableTerms,
): { readonly step: WeightStep; readonly isFurther: boolean } | { readonly problem: string } {
  const typed = cells[0] ?? "";
  const upTo = massFromText(typed.replace(FURTHER_MARK, "").replace(/^up to\s+/i, ""), terms.measures);
  if (upTo === null) {
    return { problem: `“${typed}” is no weight. Type a number and oz, lb, g or kg, such as 8 oz.` };
  }
  if (cells.length > zones.length + 1) {
    return {
      problem: `it has ${cells.length - 1} prices for ${zones.length} zones. Give each price a zone in the first row.`,
    };
  }
  const read = zonePrices(cells.slice(1), zones, terms);
  return "problem" in read
    ? read
    : { step: { upTo, prices: read.prices }, isFurther: FURTHER_MARK.test(typed) };
}
