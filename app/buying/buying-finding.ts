import { formatDay } from "#lib/units/day-text";
import { type ExpectedDelivery, latenessWords } from "./expected-deliveries";

/**
 * The first line of Buying: what is on its way, what is late, and what still has to be sent.
 *
 * @param expected deliveries, the earliest first
 * @param drafts how many orders are only drafts
 * @returns a sentence or two
 * @example buyingFinding([], 0) // "Nothing is on order."
 */
export function buyingFinding(expected: readonly ExpectedDelivery[], drafts: number): string {
  const draftWords =
    drafts === 0 ? "" : ` ${drafts === 1 ? "One draft is" : `${drafts} drafts are`} not placed yet.`;
  const [first] = expected;
  if (first === undefined) return `Nothing is on order.${draftWords}`;
  const orders = new Set(expected.map((delivery) => delivery.order.id)).size;
  const words = orders === 1 ? "One order is on its way" : `${orders} orders are on their way`;
  const late = expected.filter((delivery) => delivery.daysLate > 0);
  const [worst] = late;
  if (worst === undefined)
    return `${words}, the next due ${formatDay(first.on, { weekday: true })}.${draftWords}`;
  const what = `${worst.lines[0]?.supply ?? "one"} from ${worst.order.supplierName}`;
  const others = late.length === 1 ? "" : `, and ${late.length - 1} more`;
  return `${words}; ${what} is ${latenessWords(worst.daysLate)}${others}.${draftWords}`;
}
