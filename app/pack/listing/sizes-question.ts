import { z } from "zod";
import type { Piece } from "#lib/packing/piece/piece";
import { parseSizes } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { problemsOf } from "../../_parts/form-state";
import { measureSystem } from "../../recipes/measure-system";
import { PIECE_FORMS, type PieceForm } from "../../recipes/piece-forms";
import {
  askedTexts,
  bareWeight,
  type ListingQuery,
  type ParcelAsked,
  parcelFields,
} from "./listing-question";
import { pieceOfSizes } from "./piece-of-sizes";

/** Stands in the address where the piece is of no item type yet; no item type has this id, as it is a screen's address. */
export const NEW_PIECE = "new";

/** A piece that was never sold, by its sizes. */
export type SizesQuestion = ParcelAsked & {
  readonly form: PieceForm;
  readonly piece: Piece;
};

/** The question, or what of it can't be read, by field. */
export type ReadSizes =
  | { readonly kind: "asked"; readonly question: SizesQuestion }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Record<string, string>> };

/** More pieces than a first guess should be asked about. */
const MOST_PIECES = 24;
const LONGEST_UM = 3_000_000;
const ALL_SIDES = 3;

/**
 * Reads the question about a new piece from the address.
 *
 * @param query parameters: form, sizes, bare, frailty, pieces, style, carton
 * @param cartonIds cartons whose sizes are known
 * @param measures how a bare number is read
 */
export function sizesQuestion(
  query: ListingQuery,
  cartonIds: readonly string[],
  measures: Measures,
): ReadSizes {
  const fields = parcelFields(MOST_PIECES);
  const form = z.object({
    ...fields,
    form: z.enum(
      PIECE_FORMS.map(({ value }) => value),
      "Choose its form.",
    ),
    sizes: outerSizes(measures),
    bare: bareWeight(measures),
    frailty: z.enum(["sturdy", "usual", "thin"], "Choose how frail it is.").default("usual"),
    carton: fields.carton.refine(
      (id) => id === undefined || cartonIds.includes(id),
      "The sizes of this carton are not written down: add them under Supplies, or leave the carton open.",
    ),
  });
  const read = form.safeParse(askedTexts(query));
  if (!read.success) return { kind: "unreadable", problems: problemsOf(read.error) };
  const { sizes, bare, frailty, pieces, style = null, carton = null } = read.data;
  if (read.data.form === "box" && sizes.length < ALL_SIDES) {
    const problems = { sizes: "A block has three sizes: long x wide x high." };
    return { kind: "unreadable", problems };
  }
  const piece = { ...pieceOfSizes(read.data.form, sizes), massMg: bare, frailty };
  return { kind: "asked", question: { form: read.data.form, piece, pieces, style, cartonId: carton } };
}

function outerSizes(measures: Measures) {
  const example = "like 4 x 4 x 5 in or 10 x 12 cm";
  return z.string(`Write its outer sizes, ${example}.`).transform((text, context) => {
    const refuse = (message: string): never => {
      context.addIssue({ code: "custom", message });
      return z.NEVER;
    };
    if (measureSystem(text, measures) === "mixed") {
      return refuse(`“${text}” mixes inches and centimetres. Write all sizes in one of them, ${example}.`);
    }
    const read = parseSizes(text, measures);
    if (read.kind === "unreadable") {
      return refuse(`“${text}” can’t be read. Write two or three sizes above zero, ${example}.`);
    }
    if (read.um.some((um) => um > LONGEST_UM)) {
      return refuse(`“${text}”: at most 3 m (118 in) a side. Check the unit.`);
    }
    return read.um;
  });
}
