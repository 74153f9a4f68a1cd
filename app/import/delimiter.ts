/** Signs between the fields of a row. */
export type Delimiter = "," | ";" | "\t" | "|";

const DELIMITERS: readonly Delimiter[] = [",", ";", "\t", "|"];
const RECORDS_LOOKED_AT = 30;

/**
 * Finds the sign between fields: the one that most of the first rows hold as often as the header line does,
 * outside quotes; of those the one that makes more columns.
 *
 * @param start first lines of the file
 * @returns the comma where none stands out, as in a file of one column
 * @example delimiterOf("day;type\n2026-11-25;mug, tall") // ";"
 */
export function delimiterOf(start: string): Delimiter {
  const records = recordsOutsideQuotes(start).slice(0, RECORDS_LOOKED_AT);
  const scored = DELIMITERS.map((delimiter) => {
    const counts = records.map((record) => record.split(delimiter).length - 1);
    const wanted = counts[0] ?? 0;
    return {
      delimiter,
      wanted,
      agreeing: wanted === 0 ? 0 : counts.filter((count) => count === wanted).length,
    };
  });
  const best = scored.reduce((a, b) => {
    if (b.agreeing !== a.agreeing) return b.agreeing > a.agreeing ? b : a;
    return b.wanted > a.wanted ? b : a;
  });
  return best.wanted === 0 ? "," : best.delimiter;
}

/** The rows with what stands in quotes taken out. */
function recordsOutsideQuotes(start: string): string[] {
  return start
    .replace(/"(?:[^"]|"")*"/g, "")
    .split(/\r\n|\n|\r/)
    .filter((record) => record.trim() !== "");
}
