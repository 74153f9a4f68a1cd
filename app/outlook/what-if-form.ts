import { z } from "zod";
import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import type { WhatIf } from "#prisma/records/what-if";

const LEAST_PERCENT = -100;
const MOST_PERCENT = 900;

/** What the address asks: nothing, a change, or something that can't be read. */
export type WhatIfReading =
  | { readonly kind: "none" }
  | { readonly kind: "change"; readonly change: WhatIf }
  | { readonly kind: "unreadable"; readonly title: string; readonly wayOut: string };

const whatIfQuery = z.object({
  parcels: z
    .string()
    .regex(/^-?\d{1,4}$/)
    .transform(Number)
    .refine((percent) => LEAST_PERCENT <= percent && percent <= MOST_PERCENT),
  type: z.string().default(""),
  style: z.enum(CUSHION_STYLES).default("paper"),
});

const WAYS_OUT: Readonly<Record<string, readonly [title: string, wayOut: string]>> = {
  parcels: [
    "How many more parcels can't be read from the address.",
    `Write a whole number of percent from ${LEAST_PERCENT} to ${MOST_PERCENT}, like ?parcels=20.`,
  ],
  type: ["The item type asked for has no recipe.", "Choose one of the list."],
  style: [
    "The item type has no recipe in that cushion style.",
    "Choose another style, or write that recipe under Recipes first.",
  ],
};

/** Parameters of an address as the framework hands them over. */
export type Query = Readonly<Record<string, string | string[] | undefined>>;

/**
 * Reads the what-if of an address: `?parcels=20&type=mug&style=paper`.
 *
 * @param query parameters of the address
 * @param stylesOf cushion styles of each item type that has a recipe, by its id
 * @returns the change, or which part of it can't be read and the way out
 * @example readWhatIf({ parcels: "20" }, new Map()) // { kind: "change", change: { parcelsPercent: 20, recipe: null } }
 */
export function readWhatIf(
  query: Query,
  stylesOf: ReadonlyMap<string, ReadonlySet<CushionStyle>>,
): WhatIfReading {
  if (query.parcels === undefined) return { kind: "none" };
  const read = whatIfQuery.safeParse(query);
  if (!read.success) return unreadable(String(read.error.issues[0]?.path[0] ?? "parcels"));
  const { parcels, type, style } = read.data;
  if (type === "") return { kind: "change", change: { parcelsPercent: parcels, recipe: null } };
  const styles = stylesOf.get(type);
  if (styles === undefined) return unreadable("type");
  if (!styles.has(style)) return unreadable("style");
  return { kind: "change", change: { parcelsPercent: parcels, recipe: { itemTypeId: type, style } } };
}

function unreadable(name: string): WhatIfReading {
  const [title, wayOut] = WAYS_OUT[name] ?? [`${name} can't be read from the address.`, "Choose again."];
  return { kind: "unreadable", title, wayOut };
}
