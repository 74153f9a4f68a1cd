import type { RowReader } from "#lib/postage/card-rows/card-row";
import type { SaidPart } from "#lib/postage/card-rows/grouped-rows";

const YES = "yes";

/** Which zones something counts in, as cells under the zones. */
export function zoneMarks(marked: readonly string[], zones: readonly string[]): string[] {
  return zones.map((zone) => (marked.includes(zone) ? YES : ""));
}

/**
 * Reads which zones something counts in.
 *
 * @param part rows of the part, its row "zones" may be missing
 * @param reader the zones over the columns
 * @returns null for all zones
 */
export function zonesFromMarks(part: SaidPart, { zones, refuse }: RowReader): readonly string[] | null {
  const row = part.said.get("zones");
  if (row === undefined) return null;
  const wrong = row.cells.find((cell) => cell !== "" && cell.toLowerCase() !== YES);
  if (wrong !== undefined) {
    return refuse(row.line, `“${wrong}” is no mark. Write ${YES} under each zone where size counts.`);
  }
  const marked = zones.filter((_, at) => row.cells[at] !== "");
  return marked.length > 0
    ? marked
    : refuse(
        row.line,
        `no zone is marked. Write ${YES} under each zone where size counts, or take the row out.`,
      );
}
