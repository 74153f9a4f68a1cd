import { costValue } from "#lib/units/money";
import { costText } from "../cost-text";
import type { CostLine } from "./cost-lines";

/**
 * The first line of What packing costs.
 *
 * @param lines item types with their costs
 * @param nameOf name of an item type
 * @param shop currency and its digits after the point
 * @returns what a parcel cost, and what is rising or falling
 */
export function costsFinding(
  lines: readonly CostLine[],
  nameOf: (itemTypeId: string) => string,
  shop: { readonly currency: string; readonly minorDigits: number },
): string {
  if (lines.length === 0) return "No parcel of the last 90 days tells what packing costs.";
  const booked = lines.reduce((sum, line) => sum + line.booked, 0);
  if (booked === 0) return "What the supplies cost is not known yet, so packing has no cost in cash.";
  const cash = lines.reduce((sum, line) => sum + line.mean.cash * line.booked, 0);
  const head = `A parcel’s material cost ${costText(costValue(Math.round(cash / booked)), shop)} on average`;
  const moved = (["rising", "falling"] as const).flatMap((kind) => {
    const names = lines
      .filter(({ trend }) => trend.kind === kind)
      .map(({ itemTypeId }) => nameOf(itemTypeId));
    return names.length === 0 ? [] : [`${listed(names)} ${names.length === 1 ? "is" : "are"} ${kind}`];
  });
  return moved.length === 0
    ? `${head}; nothing moved by more than parcels differ.`
    : `${head}; ${moved.join(", ")}.`;
}

const MOST_NAMED = 3;

function listed(names: readonly string[]): string {
  if (names.length > MOST_NAMED) return `${names.length} item types`;
  return names.length === 1 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
