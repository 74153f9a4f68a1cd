import type { ImportMapping } from "#prisma/records/import/import-mapping";
import type { ImportField } from "#prisma/records/import/import-problem";
import { textSlug } from "#prisma/records/import/text-slug";
import { DayFormatTally } from "./day-format";
import type { FileHead } from "./file-head";

/** Names that columns of each field go by, in the order in which they are looked for. */
const NAMES: Record<ImportField, readonly string[]> = {
  "packed-day": [
    "packed-on",
    "packed",
    "packed-day",
    "shipped-on",
    "shipped",
    "ship-date",
    "sent-on",
    "date-shipped",
    "sale-date",
    "order-date",
    "date",
    "day",
    "datum",
  ],
  order: [
    "order-ref",
    "order-reference",
    "order-id",
    "order-number",
    "order-no",
    "order",
    "reference",
    "ref",
  ],
  "item-type": ["item-type", "item", "type", "product", "article", "sku", "item-name"],
  pieces: ["pieces", "quantity", "qty", "count", "number-of-items", "menge"],
  zone: ["zone", "destination", "region", "country", "ship-country"],
  style: ["style", "cushion-style", "cushion"],
  carton: ["carton", "box", "carton-size", "box-size", "package"],
  scale: [
    "scale-weight",
    "weight",
    "packed-weight",
    "gross-weight",
    "weight-g",
    "weight-kg",
    "weight-oz",
    "weight-lb",
  ],
  postage: ["postage", "postage-paid", "shipping-cost", "label-cost"],
  unusual: ["unusual", "exception"],
};

/**
 * Guesses which column stands for which field by the columns' names, and how days are written by the first rows.
 *
 * @param head beginning of the file
 * @returns a mapping to look over; no format of the day where the rows fit none or several
 */
export function guessedMapping(head: Extract<FileHead, { kind: "head" }>): ImportMapping {
  const columns: Partial<Record<ImportField, string>> = {};
  for (const [field, names] of Object.entries(NAMES) as [ImportField, readonly string[]][]) {
    const column = names
      .map((name) => head.columns.find((candidate) => textSlug(candidate) === name))
      .find((found) => found !== undefined);
    if (column !== undefined) columns[field] = column;
  }
  const formats = dayFormatsOf(head, columns["packed-day"]);
  const unit = /(?:^|-)(g|kg|oz|lb)$/.exec(textSlug(columns.scale ?? ""))?.[1];
  return {
    columns,
    dayFormat: formats.length === 1 ? (formats[0] ?? null) : null,
    scaleUnit: unit === "kg" || unit === "oz" || unit === "lb" ? unit : "g",
  };
}

/** The formats that most days of the first rows fit. */
function dayFormatsOf(head: Extract<FileHead, { kind: "head" }>, column: string | undefined) {
  const index = column === undefined ? -1 : head.columns.indexOf(column);
  const tally = new DayFormatTally();
  for (const cells of head.sample) tally.add(cells[index] ?? "");
  return tally.likeliest();
}
