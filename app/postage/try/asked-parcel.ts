import { z } from "zod";
import { type ExactMass, massAsStored } from "#lib/postage/exact-mass";
import { type ParcelSize, parcelSize } from "#lib/postage/parcel-size";
import { type Day, day, isDay } from "#lib/units/day";
import type { Measures } from "#lib/units/measures";
import { problemsOf } from "../../_parts/form-state";
import { massTyped, sizesTyped } from "../../_parts/typed-fields";

/** A parcel to be tried. */
export type AskedParcel = {
  readonly weight: ExactMass;
  /** as typed; null where none were */
  readonly sizes: ParcelSize | null;
  /** one of the shop's cartons, where no sizes were typed */
  readonly cartonId: string | null;
  readonly zoneId: string;
  readonly shipDay: Day;
};

/** The question, or what of it can't be read, by field. */
export type ReadParcel =
  | { readonly kind: "blank" }
  | { readonly kind: "asked"; readonly asked: AskedParcel }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Record<string, string>> };

type AskTerms = { readonly measures: Measures; readonly zoneIds: readonly string[]; readonly today: Day };

/**
 * Reads the question from the address.
 *
 * @param query fields as typed, empty ones missing: weight, sizes, carton, zone, day
 * @param terms how a bare number is read, the shop's zones, today
 */
export function askedParcel(query: Readonly<Record<string, string>>, terms: AskTerms): ReadParcel {
  if (query["weight"] === undefined && query["zone"] === undefined) return { kind: "blank" };
  const form = z.object({
    weight: massTyped(terms.measures).refine(({ mg }) => mg > 0, "Write a weight above zero."),
    sizes: sizesTyped(terms.measures)
      .refine(({ um }) => um.length === 3, "Three sides are needed: length, width and height.")
      .optional(),
    carton: z.string().optional(),
    zone: z.string("Choose a zone.").refine((id) => terms.zoneIds.includes(id), "Choose a zone of the list."),
    day: z.string().refine(isDay, "Write a day like 2026-11-25.").optional(),
  });
  const read = form.safeParse(query);
  if (!read.success) return { kind: "unreadable", problems: problemsOf(read.error) };
  const { weight, sizes, carton, zone, day: on } = read.data;
  return {
    kind: "asked",
    asked: {
      weight: massAsStored(weight.mg, { typed: weight.typed }),
      sizes: sizes === undefined ? null : parcelSize(sizes.um, sizes.typed, "box"),
      cartonId: sizes === undefined ? (carton ?? null) : null,
      zoneId: zone,
      shipDay: on === undefined ? terms.today : day(on),
    },
  };
}
