import { type Day, isDay } from "#lib/units/day";

/** The day that an address asks for: none, a day, or something that is no day. */
export type AskedDay =
  | { readonly kind: "none" }
  | { readonly kind: "day"; readonly day: Day }
  | { readonly kind: "unreadable"; readonly text: string };

/**
 * Reads `?today=2026-11-25`.
 *
 * @param text - the parameter as it stands in the address
 * @returns what was asked
 * @example askedDay("2026-11-31") // { kind: "unreadable", text: "2026-11-31" }
 */
export function askedDay(text: string | readonly string[] | null | undefined): AskedDay {
  if (text === null || text === undefined || text === "") return { kind: "none" };
  if (typeof text === "string" && isDay(text)) return { kind: "day", day: text };
  return { kind: "unreadable", text: String(text) };
}
