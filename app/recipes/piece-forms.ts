import type { PieceBody } from "#lib/packing/piece/piece";

/** The form of a piece as the seller chooses it. */
export type PieceForm = "round" | "box" | "flat" | "stemmed";

/** A size that a form asks for; `place` is where the piece keeps it. */
type FormSize = { readonly place: string; readonly label: string; readonly isOptional?: boolean };

/** What each form asks for, in the order of its fields. */
export const FORM_SIZES: Readonly<Record<PieceForm, readonly FormSize[]>> = {
  round: [
    { place: "acrossUm", label: "Across, without the handle" },
    { place: "heightUm", label: "High" },
  ],
  box: [
    { place: "lengthUm", label: "Long" },
    { place: "widthUm", label: "Wide" },
    { place: "heightUm", label: "High" },
  ],
  flat: [
    { place: "acrossUm", label: "Across, or wide" },
    { place: "longUm", label: "Long, if it is not round", isOptional: true },
    { place: "thickUm", label: "Thick" },
  ],
  stemmed: [
    { place: "bowl.acrossUm", label: "Bowl across" },
    { place: "bowl.heightUm", label: "Bowl high" },
    { place: "stem.acrossUm", label: "Stem across" },
    { place: "stem.heightUm", label: "Stem high" },
    { place: "foot.acrossUm", label: "Foot across" },
    { place: "foot.heightUm", label: "Foot high" },
  ],
};

export const PIECE_FORMS: readonly { readonly value: PieceForm; readonly words: string }[] = [
  { value: "round", words: "round, like a mug, a bottle or a bowl" },
  { value: "box", words: "a block, like a clock or a figure in its box" },
  { value: "flat", words: "flat, like a plate, a tile or a pan" },
  { value: "stemmed", words: "on a stem, like a wine glass" },
];

const FORM_OF_BODY: Readonly<Record<PieceBody["kind"], PieceForm>> = {
  cylinder: "round",
  box: "box",
  flat: "flat",
  stemmed: "stemmed",
};

/**
 * The form that a described piece was given.
 *
 * @param body its body
 * @returns the form as chosen
 */
export function formOfBody(body: PieceBody): PieceForm {
  return FORM_OF_BODY[body.kind];
}

/**
 * A body from the sizes of its form.
 *
 * @param form the form
 * @param um micrometres by place; a size that was left out is missing
 * @returns the body; a size that is missing is 0, except the length of what is round
 */
export function bodyOfForm(form: PieceForm, um: ReadonlyMap<string, number>): PieceBody {
  const at = (place: string): number => um.get(place) ?? 0;
  const part = (name: string) => ({ acrossUm: at(`${name}.acrossUm`), heightUm: at(`${name}.heightUm`) });
  switch (form) {
    case "round":
      return { kind: "cylinder", acrossUm: at("acrossUm"), heightUm: at("heightUm") };
    case "box":
      return { kind: "box", lengthUm: at("lengthUm"), widthUm: at("widthUm"), heightUm: at("heightUm") };
    case "flat":
      return {
        kind: "flat",
        acrossUm: at("acrossUm"),
        longUm: um.get("longUm") ?? null,
        thickUm: at("thickUm"),
      };
    case "stemmed":
      return { kind: "stemmed", bowl: part("bowl"), stem: part("stem"), foot: part("foot") };
    default:
      return form satisfies never;
  }
}
