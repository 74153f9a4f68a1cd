import type { Hollow, Piece } from "#lib/packing/piece/piece";
import { bareLengthUnit, formatLength, formatSizes, micrometres } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";
import type { FieldGroup, FormField } from "../_parts/form-field";
import { MOST_PARTS } from "./piece-form";
import { FORM_SIZES, formOfBody, PIECE_FORMS } from "./piece-forms";

const HOLLOWS = [
  { value: "solid", words: "solid" },
  { value: "like-a-mug", words: "hollow, like a mug or a vase" },
  { value: "hollow-share", words: "hollow in part: I say how much" },
  { value: "hollow-inner", words: "hollow: I know its inner sizes" },
];
const PARTS = [
  { value: "", words: "nothing" },
  { value: "handle", words: "a handle" },
  { value: "spout", words: "a spout" },
  { value: "knob", words: "a knob" },
  { value: "foot", words: "a foot" },
  { value: "other", words: "something else" },
];
const SIDES = ["right", "left", "front", "back", "top", "bottom"].map((side) => ({
  value: side,
  words: side,
}));
const RIMS = [
  { value: "0", words: "no ring" },
  { value: "1", words: "a ring round the lip" },
  { value: "2", words: "rings round lip and foot" },
];
/** How frail a piece is, as the seller chooses it. */
export const FRAILTIES = [
  { value: "sturdy", words: "sturdy, like an iron pan" },
  { value: "usual", words: "as usual, like a mug" },
  { value: "thin", words: "thin or fine, like blown glass" },
];

/**
 * The fields that describe a piece, in groups.
 *
 * @param piece as described before, or null
 * @param measures how sizes are shown that were not typed
 * @returns groups in the order in which a seller measures
 */
export function pieceFields(piece: Piece | null, measures: Measures): FieldGroup[] {
  const shown = (place: string): string => shownSize(piece, place, measures);
  const parts = Array.from({ length: MOST_PARTS }, (_, row) => partGroup(piece, row, shown));
  return [
    { title: "Its form", fields: bodyFields(piece, shown) },
    { title: "Is it hollow?", fields: hollowFields(piece, measures) },
    ...parts,
    {
      title: "Rims, lid and care",
      fields: [
        {
          name: "rims",
          label: "Rims that get a ring",
          kind: "choice",
          choices: RIMS,
          value: String(piece?.rims ?? 0),
        },
        { name: "lid.acrossUm", label: "Lid across", kind: "number", value: shown("lid.acrossUm") },
        {
          name: "lid.heightUm",
          label: "Lid high, with its knob",
          kind: "number",
          value: shown("lid.heightUm"),
        },
        {
          name: "frailty",
          label: "How frail it is",
          kind: "choice",
          choices: FRAILTIES,
          value: piece?.frailty ?? "usual",
        },
        {
          name: "thisSideUp",
          label: "It must stand this side up",
          kind: "tick",
          value: piece?.thisSideUp === true ? "yes" : "",
        },
      ],
    },
  ];
}

function bodyFields(piece: Piece | null, shown: (place: string) => string): FormField[] {
  const form = piece === null ? "round" : formOfBody(piece.body);
  return [
    { name: "form", label: "It is", kind: "choice", choices: PIECE_FORMS, value: form },
    ...PIECE_FORMS.flatMap(({ value: each }) =>
      FORM_SIZES[each].map(
        ({ place, label }): FormField => ({
          name: `${each}.${place}`,
          label,
          kind: "number",
          value: each === form ? shown(`body.${place}`) : "",
          onlyFor: [each],
        }),
      ),
    ),
  ];
}

function hollowFields(piece: Piece | null, measures: Measures): FormField[] {
  const [hollow] = piece?.hollows ?? [];
  const share = piece?.typed["hollows.0.share"];
  return [
    {
      name: "hollow",
      label: "It is",
      kind: "choice",
      choices: HOLLOWS,
      value: piece === null ? "like-a-mug" : hollowChoice(hollow, share),
    },
    {
      name: "hollows.0.share",
      label: "How much of it is hollow",
      kind: "number",
      value: share,
      hint: "of its room: 60 %",
      onlyFor: ["hollow-share"],
    },
    {
      name: "hollows.0.inner",
      label: "Inner sizes",
      kind: "text",
      value: innerSizes(piece, hollow, measures),
      hint: "round: across × deep; else long × wide × deep",
      onlyFor: ["hollow-inner"],
    },
  ];
}

function hollowChoice(hollow: Hollow | undefined, share: string | undefined): string {
  if (hollow === undefined) return "solid";
  if (hollow.kind !== "share") return "hollow-inner";
  return share === undefined ? "like-a-mug" : "hollow-share";
}

function innerSizes(piece: Piece | null, hollow: Hollow | undefined, measures: Measures): string {
  const typed = piece?.typed["hollows.0"];
  if (typed !== undefined) return typed;
  if (hollow?.kind !== "round" && hollow?.kind !== "square") return "";
  const sizes =
    hollow.kind === "round"
      ? [hollow.acrossUm, hollow.deepUm]
      : [hollow.lengthUm, hollow.widthUm, hollow.deepUm];
  return `${formatSizes(sizes.map(micrometres), measures)} ${bareLengthUnit(measures)}`;
}

function partGroup(piece: Piece | null, row: number, shown: (place: string) => string): FieldGroup {
  const part = piece?.stickingOut[row];
  const name = (field: string): string => `stickingOut.${row}.${field}`;
  return {
    title: row === 0 ? "What sticks out?" : `What else sticks out? (${row + 1})`,
    isFolded: row > 0 && part === undefined,
    fields: [
      { name: name("part"), label: "What", kind: "choice", choices: PARTS, value: part?.part ?? "" },
      {
        name: name("where"),
        label: "On which side",
        kind: "choice",
        choices: SIDES,
        value: part?.where ?? "right",
      },
      { name: name("outUm"), label: "How far out", kind: "number", value: shown(name("outUm")) },
      {
        name: name("alongUm"),
        label: "How long it is",
        kind: "number",
        value: piece?.typed[name("alongUm")],
        hint: "left empty: as long as the side",
      },
    ],
  };
}

/** A size as typed; one that was never typed in the shop's measures. */
function shownSize(piece: Piece | null, place: string, measures: Measures): string {
  const typed = piece?.typed[place];
  if (piece === null || typed !== undefined) return typed ?? "";
  const um = sizeAt(piece, place.split("."));
  return um === null || um === 0 ? "" : formatLength(micrometres(um), measures);
}

function sizeAt(value: unknown, path: readonly string[]): number | null {
  const [name, ...rest] = path;
  if (name === undefined) return typeof value === "number" ? value : null;
  if (typeof value !== "object" || value === null || !(name in value)) return null;
  return sizeAt(Reflect.get(value, name), rest);
}
