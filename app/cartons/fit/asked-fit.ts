import { z } from "zod";
import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import { parseSizes } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import { problemsOf } from "../../_parts/form-state";
import { lengthTyped, massTyped } from "../../_parts/typed-fields";

/** Pieces of one size. */
export type SizedPieces = { readonly count: number; readonly um: readonly [number, number, number] };

/** What a seller asks of a carton. */
export type AskedFit = {
  readonly pieces: readonly SizedPieces[];
  /** the pieces as they are, to be wrapped as usual; else with their wrap on */
  readonly areBare: boolean;
  readonly style: CushionStyle | null;
  /** bare weight of all pieces together, milligrams; null: not asked for, so no postage */
  readonly massMg: number | null;
  /** cushion on every side, micrometres; null: as usual */
  readonly cushionUm: number | null;
  readonly isUpright: boolean;
  readonly isFragile: boolean;
};

/** The question, or what of it can't be read, by field. */
export type ReadFit =
  | { readonly kind: "blank" }
  | { readonly kind: "asked"; readonly asked: AskedFit }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Record<string, string>> };

export const MOST_PIECES = 10;
const LARGEST_CUSHION_UM = 300_000;
const SIDES = 3;
const COUNTED = /^(\d{1,2})\s*(?:of|pcs?\.?|pieces?|off)\s+/i;

/**
 * Reads the question from the address.
 *
 * @param query fields as typed, empty ones missing: pieces (a line each), wrap, style, weight, cushion, upright, sturdy
 * @param measures how a bare number is read
 */
export function askedFit(query: Readonly<Record<string, string>>, measures: Measures): ReadFit {
  if (query["pieces"] === undefined && query["wrap"] === undefined) return { kind: "blank" };
  const form = z.object({
    pieces: piecesTyped(measures),
    wrap: z.enum(["bare", "wrapped"]).default("bare"),
    style: z.enum(CUSHION_STYLES).optional(),
    weight: massTyped(measures)
      .refine(({ mg }) => mg > 0, "Write a weight above zero, or leave it empty.")
      .optional(),
    cushion: lengthTyped(measures)
      .refine(({ um }) => um <= LARGEST_CUSHION_UM, "At most 30 cm (12 in): check its unit.")
      .optional(),
    upright: z.string().optional(),
    sturdy: z.string().optional(),
  });
  const read = form.safeParse(query);
  if (!read.success) return { kind: "unreadable", problems: problemsOf(read.error) };
  const { pieces, wrap, style, weight, cushion, upright, sturdy } = read.data;
  return {
    kind: "asked",
    asked: {
      pieces,
      areBare: wrap === "bare",
      style: style ?? null,
      massMg: weight?.mg ?? null,
      cushionUm: cushion?.um ?? null,
      isUpright: upright !== undefined,
      isFragile: sturdy === undefined,
    },
  };
}

/** Sizes of one piece a line, "2 of" before those that are alike. */
function piecesTyped(measures: Measures) {
  return z.string("Write three sizes, like 5 x 5 x 6 in.").transform((text, context): SizedPieces[] => {
    const lines = text.split(/[\n;]/).flatMap((line) => (line.trim() === "" ? [] : [line.trim()]));
    const pieces = lines.map((line) => sizedPieces(line, measures));
    const at = pieces.findIndex((each) => typeof each === "string");
    const wrong = pieces[at];
    const sum = pieces.reduce((all, each) => all + (typeof each === "string" ? 0 : each.count), 0);
    const message =
      typeof wrong === "string"
        ? `${lines.length > 1 ? `Line ${at + 1}, ` : ""}“${lines[at]}”: ${wrong}`
        : countProblem(sum);
    if (message === null) return pieces.filter((each) => typeof each !== "string");
    context.addIssue({ code: "custom", message });
    return z.NEVER;
  });
}

function countProblem(sum: number): string | null {
  if (sum < 1) return "Write three sizes, like 5 x 5 x 6 in.";
  return sum > MOST_PIECES
    ? `At most ${MOST_PIECES} pieces are looked at, and these are ${sum}: bundle some and give the bundle's sizes.`
    : null;
}

function sizedPieces(line: string, measures: Measures): SizedPieces | string {
  const counted = COUNTED.exec(line);
  const count = counted === null ? 1 : Number(counted[1]);
  if (count < 1) return "there must be at least one of them.";
  const sizes = parseSizes(line.slice(counted?.[0].length ?? 0), measures);
  if (sizes.kind !== "sizes") {
    return sizes.hasZero
      ? "every size must be above zero."
      : "can’t be read. Write it like 5 x 5 x 6 in, or 2 of 5 x 5 x 6 in.";
  }
  const [length, width, height] = sizes.um;
  if (sizes.um.length !== SIDES || length === undefined || width === undefined || height === undefined) {
    return "three sizes are needed: length, width and height.";
  }
  return { count, um: [length, width, height] };
}
