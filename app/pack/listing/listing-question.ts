import { z } from "zod";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { parseMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

/** What a seller says of a piece before it is listed. */
export type ListingQuestion = {
  readonly itemTypeId: string;
  readonly pieces: number;
  readonly style: (typeof CUSHION_STYLES)[number] | null;
  /** the bare weight of one piece where it is not the usual one */
  readonly bareMg: number | null;
  readonly cartonId: string | null;
};

/** The question, or what of it can't be read, by field. */
export type ReadListing =
  | { readonly kind: "asked"; readonly question: ListingQuestion }
  | { readonly kind: "blank" }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Record<string, string>> };

const MOST_PIECES = 999;

/**
 * Reads the question from the address.
 *
 * @param query parameters: type, pieces, style, bare, carton
 * @param measures how a bare number is read
 */
export function listingQuestion(
  query: Readonly<Record<string, string | string[] | undefined>>,
  measures: Measures,
): ReadListing {
  if (query["type"] === undefined) return { kind: "blank" };
  const form = z.object({
    type: z.string().min(1, "Choose what it is."),
    pieces: z
      .string()
      .regex(/^\d{1,3}$/, "Write how many pieces go into one parcel, like 2.")
      .transform(Number)
      .refine((count) => count >= 1 && count <= MOST_PIECES, "At least one piece.")
      .optional()
      .transform((count) => count ?? 1),
    style: z.enum(CUSHION_STYLES).optional().catch(undefined),
    bare: z
      .string()
      .optional()
      .transform((text, context) => {
        if (text === undefined) return null;
        const read = parseMass(text, measures);
        if (read.kind === "mass" && read.mg > 0) return read.mg as number;
        context.addIssue({
          code: "custom",
          message: `“${text}” can’t be read. Write a weight like 370 g or 13 oz.`,
        });
        return z.NEVER;
      }),
    carton: z.string().optional(),
  });
  const texts = Object.fromEntries(
    Object.entries(query).flatMap(([name, value]) =>
      typeof value === "string" && value.trim() !== "" ? [[name, value.trim()]] : [],
    ),
  );
  const read = form.safeParse(texts);
  if (!read.success) {
    const problems: Record<string, string> = {};
    for (const issue of read.error.issues) problems[issue.path.join(".")] ??= issue.message;
    return { kind: "unreadable", problems };
  }
  const { type, pieces, style, bare, carton } = read.data;
  return {
    kind: "asked",
    question: { itemTypeId: type, pieces, style: style ?? null, bareMg: bare, cartonId: carton ?? null },
  };
}
