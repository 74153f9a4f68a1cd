import type { CushionStyle } from "#lib/packing/recipe-version";
import type { CushionTerms } from "#prisma/records/cushion-terms";
import type { FormField } from "../_parts/form-field";
import { styleTitle } from "../recipes/style-title";

/** What is known of how often parcels in a style arrived broken. */
export type SeenBroken = Readonly<
  Record<CushionStyle, { readonly parcels: number; readonly broken: number }>
>;

const PER_HUNDRED = 10;
/** A tenth of 60.2 is a little more than 6.02 in binary: what was typed is shown. */
const SHOWN_DIGITS = 9;

/**
 * The fields of what minutes and breakage count for.
 *
 * @param said as it is kept
 * @param hourMinor an hour of the seller's time; null: not counted
 * @param minorDigits digits of the currency
 * @param packed styles that some kind of parcel has a card in, and parcels of late by style, for the hints
 */
export function cushionSettingsFields(
  said: CushionTerms,
  hourMinor: number | null,
  minorDigits: number,
  { inStyles, seen }: { readonly inStyles: readonly CushionStyle[]; readonly seen: SeenBroken },
): FormField[] {
  const number = (name: string, label: string, value: number | null, hint?: string): FormField => ({
    name,
    label,
    kind: "number",
    value: value === null ? "" : String(value),
    ...(hint === undefined ? {} : { hint }),
  });
  return [
    {
      name: "hour",
      label: "An hour of your time counts",
      kind: "text",
      value: hourMinor === null ? "" : (hourMinor / 10 ** minorDigits).toFixed(minorDigits),
      hint: "empty: it is not counted",
    },
    ...inStyles.map((style) =>
      number(`minutes.${style}`, `${styleTitle(style)}, minutes a parcel`, said.minutes[style]),
    ),
    ...inStyles.map((style) =>
      number(
        `broken.${style}`,
        `${styleTitle(style)}, broken of 100`,
        perHundred(said.brokenPerMille[style]),
        seenWords(seen[style]),
      ),
    ),
  ];
}

function perHundred(perMille: number | null): number | null {
  return perMille === null ? null : Number((perMille / PER_HUNDRED).toFixed(SHOWN_DIGITS));
}

function seenWords({ parcels, broken }: SeenBroken[CushionStyle]): string {
  return parcels === 0 ? "none sent yet" : `yours in a year: ${broken} of ${parcels}`;
}
