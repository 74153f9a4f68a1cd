import type { OrderLine } from "#prisma/records/purchase-orders";

const NAMED = 3;

/** The address of an order's own page. */
export function orderHref(id: string): string {
  return `/buying/${encodeURIComponent(id)}`;
}

/**
 * What an order holds, in few words.
 *
 * @param lines its lines
 * @returns "Small bubble (4), Tissue (2) and 3 more"
 */
export function linesWords(lines: readonly Pick<OrderLine, "supply" | "packs" | "open">[]): string {
  if (lines.length === 0) return "nothing yet";
  const named = lines.slice(0, NAMED).map((line) => `${line.supply} (${line.open?.packs ?? line.packs})`);
  const more = lines.length - named.length;
  return more === 0 ? named.join(", ") : `${named.join(", ")} and ${more} more`;
}
