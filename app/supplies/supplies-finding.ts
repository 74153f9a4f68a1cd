import type { SupplyRow } from "./supply-rows";

/**
 * The first line of Supplies: how many there are and which want a count.
 *
 * @param rows the rows of the table
 * @returns a sentence
 * @example suppliesFinding([]) // "No supplies yet: copy the starter recipes or add the first one."
 */
export function suppliesFinding(rows: readonly Pick<SupplyRow, "state" | "name">[]): string {
  if (rows.length === 0) return "No supplies yet: copy the starter recipes or add the first one.";
  const supplies = rows.length === 1 ? "One supply" : `${rows.length} supplies`;
  const toCount = rows.filter((row) => row.state !== "counted");
  const [first] = toCount;
  if (first === undefined) return `${supplies} on the shelf, all of them counted.`;
  if (toCount.length === 1) return `${supplies} on the shelf; ${first.name} wants a count.`;
  return `${supplies} on the shelf; ${toCount.length} of them want a count.`;
}
