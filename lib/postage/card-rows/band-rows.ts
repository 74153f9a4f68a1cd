import { NO_PRICE_MARK, type RowReader } from "#lib/postage/card-rows/card-row";
import type { BandRows, SaidRow } from "#lib/postage/card-rows/grouped-rows";
import { plainMoney } from "#lib/postage/card-rows/plain-money";
import { saidLength, saidMass, saidValue } from "#lib/postage/card-rows/said-values";
import { lengthFromText, massFromText } from "#lib/postage/measure-from-text";
import type { BeyondLastStep, RateBand, WeightStep, ZonePrices } from "#lib/postage/rate-card";
import type { SizeWalls } from "#lib/postage/size-walls";
import { measureWords, type TypedLength } from "#lib/postage/typed-measure";
import { zonePrices } from "#lib/postage/zone-prices";
import type { Measures } from "#lib/units/measures";

/**
 * A band as rows: its name and walls where it has any, then its steps.
 *
 * @param band of a card
 * @param priceCells puts prices in the order of the card's zones under the columns
 * @param minorDigits of the currency
 * @param isFirst whether it may go without a name
 */
export function bandRows(
  band: RateBand,
  priceCells: (texts: readonly string[]) => readonly string[],
  minorDigits: number,
  isFirst: boolean,
): string[][] {
  const { name, walls, countsSize, steps, beyond } = band;
  const prices = (row: ZonePrices) =>
    priceCells(row.map((minor) => (minor === null ? NO_PRICE_MARK : plainMoney(minor, minorDigits))));
  return [
    ...(name === "" && isFirst ? [] : [["band", "name", name]]),
    ...wallRows(walls),
    ...(countsSize ? [] : [["band", "by size", "no"]]),
    ...steps.map((step) => ["step", "up to", measureWords(step.upTo), ...prices(step.prices)]),
    ...(beyond.kind === "notCarried"
      ? []
      : [["further", "each", measureWords(beyond.each), ...prices(beyond.prices)]]),
  ];
}

function wallRows({ longest, lengthAndGirth, sides, weight }: SizeWalls): string[][] {
  const rows: [string, string | null][] = [
    ["longest side", longest === null ? null : measureWords(longest)],
    ["length and girth", lengthAndGirth === null ? null : measureWords(lengthAndGirth)],
    ["sides", sides === null ? null : sides.map(measureWords).join(" x ")],
    ["heaviest", weight === null ? null : measureWords(weight)],
  ];
  return rows.flatMap(([what, text]) => (text === null ? [] : [["band", what, text]]));
}

/**
 * Reads a band.
 *
 * @param rows of the band
 * @param onCard whether the card has the zone over each column
 * @param reader measures, currency and zones
 */
export function bandFromRows(rows: BandRows, onCard: readonly boolean[], reader: RowReader): RateBand {
  const further = rows.said.get("further");
  const bySize = saidValue(rows, "by size", yesOrNo, "yes or no", reader);
  return {
    name: rows.said.get("name")?.value ?? "",
    walls: {
      longest: saidLength(rows, "longest side", reader),
      lengthAndGirth: saidLength(rows, "length and girth", reader),
      sides: saidValue(
        rows,
        "sides",
        (text) => sidesFromText(text, reader.measures),
        "three lengths with a unit, such as 45 x 35 x 16 cm",
        reader,
      ),
      weight: saidMass(rows, "heaviest", reader),
    },
    countsSize: bySize ?? true,
    steps: rows.steps.flatMap((row) => stepFromRow(row, onCard, reader) ?? []),
    beyond: further === undefined ? { kind: "notCarried" } : furtherFromRow(further, onCard, reader),
  };
}

/** Whether any row of a band has something under a column. */
export function hasPriceUnder({ steps, said }: BandRows, column: number): boolean {
  const further = said.get("further");
  return [...steps, ...(further === undefined ? [] : [further])].some(({ cells }) => cells[column] !== "");
}

function yesOrNo(text: string): boolean | null {
  const word = text.toLowerCase();
  if (word === "yes") return true;
  return word === "no" ? false : null;
}

/**
 * Reads three sides; a unit behind the last one holds for those without.
 *
 * @param text "45 x 35 x 16 cm", "18 in x 14 in x 6 in"
 * @param measures whose decimal comma
 */
export function sidesFromText(
  text: string,
  measures: Measures,
): readonly [TypedLength, TypedLength, TypedLength] | null {
  const parts = text.trim().split(/\s*[x×*]\s*/i);
  const unit = /[a-z]+$/i.exec(parts.at(-1) ?? "")?.[0] ?? "";
  const [first, second, third, ...more] = parts.map((part) =>
    lengthFromText(/[a-z]$/i.test(part) ? part : `${part} ${unit}`, measures),
  );
  return first && second && third && more.length === 0 ? [first, second, third] : null;
}

function stepFromRow(row: SaidRow, onCard: readonly boolean[], reader: RowReader): WeightStep | null {
  const read = pricedWeight(row, onCard, reader);
  return read === null ? null : { upTo: read.weight, prices: read.prices };
}

function furtherFromRow(row: SaidRow, onCard: readonly boolean[], reader: RowReader): BeyondLastStep {
  const read = pricedWeight(row, onCard, reader);
  return read === null
    ? { kind: "notCarried" }
    : { kind: "perFurther", each: read.weight, prices: read.prices };
}

function pricedWeight({ line, value, cells }: SaidRow, onCard: readonly boolean[], reader: RowReader) {
  const weight = massFromText(value.replace(/^up to\s+/i, ""), reader.measures);
  if (weight === null) {
    return reader.refuse(line, `“${value}” is no weight. Write a number with oz, lb, g or kg, such as 8 oz.`);
  }
  const own = <T>(values: readonly T[]) => values.filter((_, at) => onCard[at] === true);
  const terms = { minorDigits: reader.minorDigits, blanks: "refused" } as const;
  const read = zonePrices(own(cells), own(reader.zones), terms);
  if ("problem" in read) return reader.refuse(line, `${measureWords(weight)}: ${read.problem}`);
  return { weight, prices: read.prices };
}
