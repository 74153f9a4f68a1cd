import { z } from "zod";
import type { Frailty, Hollow, Piece, StickingOut } from "#lib/packing/piece/piece";
import { bodyBlock } from "#lib/packing/piece/piece-block";
import { pieceProblems } from "#lib/packing/piece/piece-problems";
import type { Measures } from "#lib/units/measures";
import { problemsOf } from "../_parts/form-state";
import { lengthTyped, sizesTyped } from "../_parts/typed-fields";
import { measureSystem } from "./measure-system";
import { bodyOfForm, FORM_SIZES, PIECE_FORMS, type PieceForm } from "./piece-forms";

/** Rows for what sticks out. */
export const MOST_PARTS = 4;
/** A mug or a vase: so much of its room is hollow. Common practice, no source. */
export const USUAL_HOLLOW = 0.8;

const LONGEST_UM = 3_000_000;
const MIXED =
  "The other sizes are in another measure. Describe the whole piece in inches or in centimetres, the unit behind each size.";
const HALVES = ["left", "right", "front", "back", "top", "bottom"] as const;

const headForm = z.object({
  form: z.enum(
    PIECE_FORMS.map(({ value }) => value),
    "Choose its form.",
  ),
  hollow: z.enum(["solid", "like-a-mug", "hollow-share", "hollow-inner"], "Say whether it is hollow."),
  rims: z.enum(["0", "1", "2"], "Choose how many rims get a ring.").transform(rimsOf),
  frailty: z.enum(["sturdy", "usual", "thin"], "Choose how frail it is."),
  thisSideUp: z
    .string()
    .optional()
    .transform((value) => value === "yes"),
});
const partForm = z.object({
  part: z.enum(["handle", "spout", "knob", "foot", "other"], "Choose what sticks out, or empty this row."),
  where: z.enum(HALVES, "Choose the side."),
});
const shareForm = z
  .string("Write how much of it is hollow, like 60 %.")
  .regex(/^\d{1,3}(?:[.,]\d+)?\s*%?$/, "Write how much of it is hollow, like 60 %.")
  .transform((text) => Number(text.replace("%", "").replace(",", ".")) / 100);

/** What a description comes to: the piece, or the problems by field. */
export type PieceReading =
  | { readonly kind: "piece"; readonly piece: Piece }
  | { readonly kind: "refused"; readonly problems: Readonly<Record<string, string>> };

/**
 * Reads the description of a piece. Only the fields of the chosen form count. A part that sticks out and whose length
 * was left out runs along the whole side.
 *
 * @param typed field names and texts; empty ones missing
 * @param itemType its id and bare weight in milligrams
 * @param measures how sizes without a unit are read
 * @returns the piece with what was typed, or what to mend
 */
export function readPiece(
  typed: Readonly<Record<string, string>>,
  itemType: { readonly id: string; readonly massMg: number | null },
  measures: Measures,
): PieceReading {
  const reader = pieceReader(typed, measures);
  const head = reader.read(headForm, typed, (field) => field);
  if (head === undefined) return { kind: "refused", problems: reader.problems };
  const { form, rims, frailty, thisSideUp } = head;
  const sizes = FORM_SIZES[form].flatMap(({ place, isOptional = false }): [string, number][] => {
    const um = reader.length(`${form}.${place}`, `body.${place}`, isOptional);
    return um === null ? [] : [[place, um]];
  });
  const body = bodyOfForm(form, new Map(sizes));
  const hollows = hollowsOf(head.hollow, reader);
  const lid = { acrossUm: reader.length("lid.acrossUm"), heightUm: reader.length("lid.heightUm") };
  const hasLid = lid.acrossUm !== null || lid.heightUm !== null;
  const asked = hasLid ? { acrossUm: lid.acrossUm ?? 0, heightUm: lid.heightUm ?? 0 } : null;
  const stickingOut = partsOf(reader, body);
  if (Object.keys(reader.problems).length > 0) return { kind: "refused", problems: reader.problems };
  const piece: Piece = {
    itemTypeId: itemType.id,
    massMg: itemType.massMg,
    body,
    hollows,
    stickingOut,
    rims,
    lid: asked,
    thisSideUp,
    frailty: frailty satisfies Frailty,
    typed: reader.kept,
  };
  const problems = pieceProblems(piece).map(({ field, words }) => [fieldOf(field, form, piece), words]);
  return problems.length === 0
    ? { kind: "piece", piece }
    : { kind: "refused", problems: Object.fromEntries(problems) };
}

type PieceReader = ReturnType<typeof pieceReader>;

/** Reads fields one by one, notes their problems, and keeps what was typed by the place in the piece. */
function pieceReader(typed: Readonly<Record<string, string>>, measures: Measures) {
  const problems: Record<string, string> = {};
  const kept: Record<string, string> = {};
  let system: Measures | null = null;
  const read = <T>(form: z.ZodType<T>, value: unknown, at: (field: string) => string): T | undefined => {
    const result = form.safeParse(value);
    if (result.success) return result.data;
    for (const [field, words] of Object.entries(problemsOf(result.error))) problems[at(field)] ??= words;
    return undefined;
  };
  const measured = <T>(form: z.ZodType<T>, field: string, place: string): T | null => {
    const text = typed[field] ?? "";
    const value = read(form, text, () => field);
    if (value === undefined) return null;
    const own = measureSystem(text, measures);
    if (own === "mixed" || (system !== null && own !== system)) problems[field] ??= `“${text}”: ${MIXED}`;
    if (own !== "mixed") system ??= own;
    kept[place] = text;
    return value;
  };
  const length = (field: string, place = field, isOptional = true): number | null => {
    if (typed[field] === undefined) {
      if (!isOptional) problems[field] = "Write this size, like 4 1/2 in or 11 cm.";
      return null;
    }
    const um = measured(lengthTyped(measures), field, place)?.um ?? null;
    if (um !== null && um > LONGEST_UM) problems[field] ??= "At most 3 m (118 in): check its unit.";
    return um;
  };
  const inner = (field: string, place: string): readonly number[] =>
    measured(sizesTyped(measures), field, place)?.um ?? [];
  return { typed, problems, kept, read, length, inner };
}

function hollowsOf(hollow: z.output<typeof headForm>["hollow"], reader: PieceReader): readonly Hollow[] {
  if (hollow === "solid") return [];
  if (hollow === "like-a-mug") return [{ kind: "share", share: USUAL_HOLLOW }];
  if (hollow === "hollow-share") {
    const share = reader.read(shareForm, reader.typed["hollows.0.share"], () => "hollows.0.share");
    reader.kept["hollows.0.share"] = reader.typed["hollows.0.share"] ?? "";
    return share === undefined ? [] : [{ kind: "share", share }];
  }
  const [first = 0, second = 0, third] = reader.inner("hollows.0.inner", "hollows.0");
  if (third === undefined) return [{ kind: "round", acrossUm: first, deepUm: second }];
  return [{ kind: "square", lengthUm: first, widthUm: second, deepUm: third }];
}

function partsOf(reader: PieceReader, body: Piece["body"]): readonly StickingOut[] {
  return Array.from({ length: MOST_PARTS }, (_, row) => row).flatMap((row): StickingOut[] => {
    const name = (field: string): string => `stickingOut.${row}.${field}`;
    const part = reader.typed[name("part")];
    const isEmpty = reader.typed[name("outUm")] === undefined && reader.typed[name("alongUm")] === undefined;
    if (part === undefined && isEmpty) return [];
    const read = reader.read(partForm, { part, where: reader.typed[name("where")] }, name);
    const outUm = reader.length(name("outUm"), name("outUm"), false);
    const alongUm = reader.length(name("alongUm"));
    if (read === undefined || outUm === null) return [];
    return [{ ...read, outUm, alongUm: alongUm ?? wholeSide(read.where, body) }];
  });
}

/** How long the side of a body is that a part may run along. */
function wholeSide(where: StickingOut["where"], body: Piece["body"]): number {
  const { lengthUm, widthUm, heightUm } = bodyBlock(body);
  return where === "top" || where === "bottom" ? Math.max(lengthUm, widthUm) : heightUm;
}

/** The field of the form that a place of the piece was read from. */
function fieldOf(place: string, form: PieceForm, { hollows, typed }: Piece): string {
  if (place.startsWith("body.")) return `${form}.${place.slice("body.".length)}`;
  if (place === "massMg") return "";
  if (!place.startsWith("hollows")) return place;
  if (typed["hollows.0.share"] !== undefined) return "hollows.0.share";
  return hollows[0]?.kind === "share" ? "hollow" : "hollows.0.inner";
}

function rimsOf(text: "0" | "1" | "2"): Piece["rims"] {
  if (text === "0") return 0;
  return text === "1" ? 1 : 2;
}
