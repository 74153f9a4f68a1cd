import type { Block } from "#lib/packing/block";
import { cartonBlank } from "#lib/packing/carton-blank";
import { parseSizes } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { parseMoney } from "#lib/units/money";
import type { ShelfCarton } from "../shelf-carton";

/** A size that the shop could buy; value in 1/10,000 minor unit, guessed by the area of its board where none was typed. */
export type BuyableSize = {
  readonly name: string;
  readonly inside: Block;
  readonly value: number;
  readonly isPriceGuess: boolean;
};

/** The sizes typed, or which line can't be read. */
export type ReadSizes =
  | { readonly kind: "sizes"; readonly sizes: readonly BuyableSize[] }
  | { readonly kind: "unreadable"; readonly message: string };

export const MOST_SIZES = 40;
const VALUE_PER_MINOR = 10_000;

/** Sizes that are commonly sold, in inches: common practice, no source. */
export const COMMON_SIZES = [
  "6 x 6 x 6 in",
  "8 x 6 x 4 in",
  "8 x 8 x 8 in",
  "9 x 6 x 4 in",
  "10 x 8 x 6 in",
  "10 x 10 x 10 in",
  "12 x 9 x 6 in",
  "12 x 10 x 8 in",
  "12 x 12 x 6 in",
  "12 x 12 x 10 in",
  "12 x 12 x 12 in",
  "14 x 10 x 8 in",
  "14 x 14 x 8 in",
  "14 x 14 x 14 in",
  "16 x 12 x 8 in",
  "16 x 16 x 16 in",
  "18 x 12 x 6 in",
].join("\n");

/**
 * Reads sizes that one could buy: a line each, the price of one behind a semicolon.
 *
 * @param text lines like "12 x 9 x 6 in; 0.85"
 * @param shop how bare numbers and money are read
 * @param cartons those of the shelf, whose prices tell what board costs
 */
export function rangeSizes(
  text: string,
  shop: { readonly measures: Measures; readonly minorDigits: number },
  cartons: readonly ShelfCarton[],
): ReadSizes {
  const lines = text
    .split("\n")
    .flatMap((line, at) => (line.trim() === "" ? [] : [{ line: line.trim(), at }]));
  if (lines.length > MOST_SIZES) {
    return {
      kind: "unreadable",
      message: `At most ${MOST_SIZES} sizes are looked at, and these are ${lines.length}.`,
    };
  }
  const perArea = valuePerArea(cartons);
  const sizes: BuyableSize[] = [];
  for (const { line, at } of lines) {
    const [sizesText = "", priceText = ""] = line.split(";").map((part) => part.trim());
    const read = parseSizes(sizesText, shop.measures);
    const [lengthUm, widthUm, heightUm, ...more] = read.kind === "sizes" ? read.um : [];
    if (lengthUm === undefined || widthUm === undefined || heightUm === undefined || more.length > 0) {
      return {
        kind: "unreadable",
        message: `Line ${at + 1}, “${line}”: write three inside sizes, like 12 x 9 x 6 in; 0.85.`,
      };
    }
    const price = priceText === "" ? null : parseMoney(priceText, shop.minorDigits);
    if (price !== null && (price.kind !== "money" || price.minor < 0)) {
      return {
        kind: "unreadable",
        message: `Line ${at + 1}, “${priceText}”: write the price of one, like 0.85, or leave it out.`,
      };
    }
    const inside = {
      lengthUm: Math.max(lengthUm, widthUm),
      widthUm: Math.min(lengthUm, widthUm),
      heightUm,
    };
    sizes.push({
      name: sizesText,
      inside,
      value: price === null ? Math.round(perArea * cartonBlank(inside)) : price.minor * VALUE_PER_MINOR,
      isPriceGuess: price === null,
    });
  }
  return { kind: "sizes", sizes };
}

/** What board is taken to cost where no carton has a price, minor units a square metre: a guess. */
const MINOR_PER_SQUARE_METRE = 100;
const SQUARE_METRE_UM2 = 1e12;

/** What board costs by its area, over the cartons whose price is known. */
function valuePerArea(cartons: readonly ShelfCarton[]): number {
  let area = 0;
  let paid = 0;
  for (const { inside, value } of cartons) {
    if (value === null || value <= 0) continue;
    area += cartonBlank(inside);
    paid += value;
  }
  return area > 0 ? paid / area : (MINOR_PER_SQUARE_METRE * VALUE_PER_MINOR) / SQUARE_METRE_UM2;
}
