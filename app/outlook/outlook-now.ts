import type { Day } from "#lib/units/day";
import { type ShopNow, shopNow } from "../_parts/shop-now";
import { type AskedDay, askedDay } from "../this-week/asked-day";

/** The shop on the day that the address asks for, else today. */
export type OutlookNow = ShopNow & { readonly asked: AskedDay };

/**
 * The shop on the day of `?today=2026-11-25`, so that an outlook of the past can be looked at again.
 *
 * @param text the parameter as it stands in the address
 * @returns the shop with that day as today; with the real day where there is none or it can't be read
 */
export async function outlookNow(text: string | readonly string[] | undefined): Promise<OutlookNow> {
  const now = await shopNow();
  const asked = askedDay(text);
  return { ...now, asked, today: asked.kind === "day" ? asked.day : now.today };
}

/**
 * An address that keeps the day asked for.
 *
 * @param href address without a query
 * @param asked the day that the page was asked for
 * @example withDay("/outlook", { kind: "none" }) // "/outlook"
 */
export function withDay(href: string, asked: AskedDay): string {
  return asked.kind === "day" ? `${href}?today=${asked.day satisfies Day}` : href;
}
