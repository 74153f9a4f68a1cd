/** How far an order is. */
export type PurchaseStatus = "draft" | "placed" | "partly received" | "received" | "cancelled";

/** What a status is told from: whether anything of a line came, and how it was closed. */
export type LineState = {
  readonly cameIn: boolean;
  /** null while it is on order */
  readonly closedAs: string | null;
};

/**
 * Status of an order, told from its lines: partly received while something came and something is still on order;
 * received when nothing is on order any more and something came, even if the rest was cancelled.
 *
 * @param state as stored: draft or placed
 * @param lines all lines, with those that stand in for the rest of another
 * @returns the status; an order placed without lines counts as cancelled
 * @example purchaseStatus("placed", [{ cameIn: true, closedAs: "received" }, { cameIn: false, closedAs: null }])
 * // "partly received"
 */
export function purchaseStatus(state: string, lines: readonly LineState[]): PurchaseStatus {
  if (state === "draft") return "draft";
  const cameIn = lines.some((line) => line.cameIn);
  const isOpen = lines.some((line) => line.closedAs === null);
  if (isOpen) return cameIn ? "partly received" : "placed";
  return cameIn ? "received" : "cancelled";
}
