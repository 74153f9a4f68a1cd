import type { Supply } from "#prisma/records/supplies";

/**
 * Supplies with bubble before all others: its price moves more than that of paper.
 *
 * @param supplies in any order
 * @returns the same, else in their order
 */
export function bubbleFirst(supplies: readonly Supply[]): Supply[] {
  return supplies.toSorted((a, b) => Number(b.kind === "bubble") - Number(a.kind === "bubble"));
}
