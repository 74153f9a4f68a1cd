import type { ImportField, ImportProblem } from "#prisma/records/import/import-problem";

/** What each field is called, and what may stand in it. */
export const FIELD_WORDS: Record<ImportField, { readonly name: string; readonly expected: string }> = {
  "packed-day": { name: "Day packed", expected: "a day written as chosen for the column" },
  order: { name: "Order reference", expected: "up to 200 letters and figures" },
  "item-type": { name: "Item type", expected: "the name of an item type" },
  pieces: { name: "Pieces", expected: "a whole number from 1 to 10,000" },
  zone: { name: "Zone", expected: "the name of a zone" },
  style: { name: "Cushion style", expected: "paper, bubble or mixed" },
  carton: { name: "Carton", expected: "the name of a carton" },
  scale: { name: "Scale weight", expected: "a weight such as 450 g, 1.2 kg or 2 lb 15 oz" },
  postage: { name: "Postage", expected: "an amount of money such as 8.40" },
  unusual: { name: "Unusual", expected: "yes or no" },
};

const NOT_TEXT_WORDS = {
  empty: "The file is empty. Export it again and choose the new file.",
  spreadsheet: "This is a spreadsheet, not a CSV file. Open it and save it as CSV, then choose that file.",
  binary: "This is not a text file that can be read here. Save it as “CSV UTF-8”, then choose that file.",
  "broken-utf-16": "The file breaks off in the middle of a sign. Export it again and choose the new file.",
} as const;

/**
 * A problem of a file in words: the line, the field, the value and what to do.
 *
 * @example problemWords({ kind: "missing", line: 7, field: "item-type" }) // "Line 7: Item type is empty. …"
 */
export function problemWords(problem: ImportProblem): string {
  switch (problem.kind) {
    case "not-text":
      return NOT_TEXT_WORDS[problem.reason];
    case "no-rows":
      return "The file has a header line and no rows below it. Export a longer span of days.";
    case "unmapped":
      return `${FIELD_WORDS[problem.field].name}: no column is chosen for it. Choose the column that holds it.`;
    case "day-format":
      return dayFormatWords(problem.column, problem.fits);
    case "broken-quotes":
      return `Line ${problem.line}: a quotation mark stands inside a field or is never closed. Write the field in quotation marks and double those inside it.`;
    case "row-too-long":
      return `Line ${problem.line}: the row does not end. Look for a quotation mark that is never closed at or above this line.`;
    case "row-length":
      return `Line ${problem.line}: ${problem.cells} fields stand under ${problem.columns} columns. Put a field that holds the delimiter in quotation marks, or add what is missing.`;
    case "missing":
      return `Line ${problem.line}: ${FIELD_WORDS[problem.field].name} is empty. Fill it in, or take the row out.`;
    case "unreadable":
      return `Line ${problem.line}: ${FIELD_WORDS[problem.field].name}: “${problem.value}” can't be read. Write ${FIELD_WORDS[problem.field].expected}.`;
    case "future-day":
      return `Line ${problem.line}: “${problem.value}” lies after today. Mend the day, or check how days are written in this file.`;
    case "unknown-value":
      return `${FIELD_WORDS[problem.field].name}: “${problem.value}” is not known. Write ${FIELD_WORDS[problem.field].expected}.`;
    case "too-many-values":
      return `${FIELD_WORDS[problem.field].name}: more than ${problem.limit} texts are not known. Check that the right column is chosen.`;
    case "rows-disagree":
      return `Line ${problem.line}: ${FIELD_WORDS[problem.field].name} is not the same on all rows of order ${problem.orderRef} on this day. Make them the same, or give each parcel its own reference.`;
    case "stopped":
      return "The import stopped before it was done. Nothing was booked. Choose the file again.";
    default:
      return problem satisfies never;
  }
}

function dayFormatWords(column: string, fits: readonly string[]): string {
  if (fits.length === 0) {
    return `The days in “${column}” are written in no way that is known. Write them as 2026-11-25.`;
  }
  return `The days in “${column}” can be read as ${fits.join(" or as ")}. Choose which one it is.`;
}
