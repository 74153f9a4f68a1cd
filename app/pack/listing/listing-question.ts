import { z } from "zod";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { parseMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { problemsOf } from "../../_parts/form-state";

/** How the parcel is packed, whatever the piece is. */
export type ParcelAsked = {
  readonly pieces: number;
  /** null: as usual */
  readonly style: (typeof CUSHION_STYLES)[number] | null;
  /** null: the one that the card names, or the smallest that will do */
  readonly cartonId: string | null;
};

/** What a seller says of a piece of a known item type before it is listed. */
export type ListingQuestion = ParcelAsked & {
  readonly itemTypeId: string;
  /** the bare weight of one piece where it is not the usual one */
  readonly bareMg: number | null;
};

/** The question, or what of it can't be read, by field. */
export type ReadListing =
  | { readonly kind: "asked"; readonly question: ListingQuestion }
  | { readonly kind: "blank" }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Record<string, string>> };

/** What stands in the address. */
export type ListingQuery = Readonly<Record<string, string | string[] | undefined>>;

const MOST_PIECES = 999;
/** Heavier than anything that a carton holds; so that sums stay exact. */
const HEAVIEST_MG = 1_000_000_000;

/**
 * Reads the question from the address.
 *
 * @param query parameters: type, pieces, style, bare, carton
 * @param measures how a bare number is read
 */
export function listingQuestion(query: ListingQuery, measures: Measures): ReadListing {
  if (query["type"] === undefined) return { kind: "blank" };
  const form = z.object({
    ...parcelFields(MOST_PIECES),
    type: z.string("Choose what it is."),
    bare: bareWeight(measures).optional(),
  });
  const read = form.safeParse(askedTexts(query));
  if (!read.success) return { kind: "unreadable", problems: problemsOf(read.error) };
  const { type, pieces, style = null, bare = null, carton = null } = read.data;
  return { kind: "asked", question: { itemTypeId: type, pieces, style, bareMg: bare, cartonId: carton } };
}

/**
 * The fields that every question has.
 *
 * @param mostPieces so many pieces at most go into one parcel
 */
export function parcelFields(mostPieces: number) {
  return {
    pieces: z
      .string()
      .regex(/^\d{1,3}$/, "Write how many pieces go into one parcel, like 2.")
      .transform(Number)
      .refine((count) => count >= 1, "At least one piece.")
      .refine((count) => count <= mostPieces, `At most ${mostPieces} pieces in one parcel.`)
      .default(1),
    style: z.enum(CUSHION_STYLES).optional().catch(undefined),
    carton: z.string().optional(),
  };
}

/**
 * The bare weight of one piece, in milligrams above 0.
 *
 * @param measures how a bare number is read
 */
export function bareWeight(measures: Measures) {
  return z.string("Write what the bare piece weighs, like 370 g or 13 oz.").transform((text, context) => {
    const read = parseMass(text, measures);
    if (read.kind === "mass" && read.mg > 0 && read.mg <= HEAVIEST_MG) return read.mg as number;
    const message =
      read.kind === "mass"
        ? `“${text}”: write a weight above zero and below 1,000 kg (2,204 lb). Check its unit.`
        : `“${text}” can’t be read. Write a weight like 370 g or 13 oz.`;
    context.addIssue({ code: "custom", message });
    return z.NEVER;
  });
}

/**
 * What was typed, trimmed; fields left empty are missing.
 *
 * @param query what stands in the address
 */
export function askedTexts(query: ListingQuery): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(query).flatMap(([name, value]) =>
      typeof value === "string" && value.trim() !== "" ? [[name, value.trim()]] : [],
    ),
  );
}
