import type { PlanAim } from "#lib/purchasing/plan/plan-question";
import { parseMoney } from "#lib/units/money";

/** What the plan was asked for, as in the address, and whether a sum there can't be read. */
export type AskedAim = { readonly aim: PlanAim; readonly unreadable: string | null };

/** What little more the plan with the least room may cost; a guess, no source. */
const ROOM_EXTRA_SHARE = 0.05;

/**
 * Reads `?aim=urgent`, `?aim=least-room` or `?aim=within&sum=60`; the cheapest where nothing or something else is asked.
 *
 * @param address the parameters
 * @param minorDigits digits after the point of the shop's currency
 * @returns the aim; the cheapest with the text of a sum that can't be read
 */
export function planAim(
  address: { readonly aim?: string | string[] | undefined; readonly sum?: string | string[] | undefined },
  minorDigits: number,
): AskedAim {
  if (address.aim === "urgent") return { aim: { kind: "urgent" }, unreadable: null };
  if (address.aim === "least-room") {
    return { aim: { kind: "least-room", extraShare: ROOM_EXTRA_SHARE }, unreadable: null };
  }
  if (address.aim !== "within") return { aim: { kind: "cheapest" }, unreadable: null };
  const text = typeof address.sum === "string" ? address.sum : "";
  const sum = parseMoney(text, minorDigits);
  return sum.kind === "money" && sum.minor >= 0
    ? { aim: { kind: "within", minor: sum.minor }, unreadable: null }
    : { aim: { kind: "cheapest" }, unreadable: text };
}
