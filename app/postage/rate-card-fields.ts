import type { SourcedCard } from "#lib/postage/card-rows/card-row";
import { exactNumber } from "#lib/postage/card-rows/exact-number";
import { feeLine } from "#lib/postage/card-rows/fee-line";
import { roundingText } from "#lib/postage/card-rows/rounding-text";
import { divisorText } from "#lib/postage/card-rows/size-rule-rows";
import type { RateCard } from "#lib/postage/rate-card";
import { rateTableText } from "#lib/postage/rate-table-text";
import { measureWords, type TypedMeasure } from "#lib/postage/typed-measure";
import type { Day } from "#lib/units/day";
import { minorDigitsOf } from "#lib/units/minor-digits";
import type { FieldGroup, FormField } from "../_parts/form-field";

/** The form of a card: its rules stand folded. */
export type CardForm = { readonly groups: readonly FieldGroup[]; readonly fields: readonly FormField[] };

/**
 * Whether the form can say all that a card says; a card of several bands takes rows.
 *
 * @param card any
 */
export function fitsForm({ bands, dimensional, fees, currency }: RateCard): boolean {
  const [band, ...others] = bands;
  const isPlain = others.length === 0 && band?.name === "" && (band.countsSize || dimensional === null);
  const isPlainRule =
    dimensional === null ||
    (dimensional.shapeFactor === null && dimensional.atMost === null && dimensional.zones === null);
  return isPlain && isPlainRule && fees.every((fee) => feeLine(fee, minorDigitsOf(currency)) !== null);
}

/**
 * The fields of a rate card.
 *
 * @param kept a card that `fitsForm`, its zones as names; null for a new one
 * @param zones names of the shop's zones, for the example
 * @param today first day of a new card
 */
export function rateCardFields(kept: SourcedCard | null, zones: readonly string[], today: Day): CardForm {
  const card = kept?.card;
  const band = card?.bands[0];
  const digits = minorDigitsOf(card?.currency ?? "USD");
  const [first = "Near", second] = zones;
  const names = second === undefined ? first : `${first}  ${second}`;
  const prices = second === undefined ? "4.60" : "4.60  5.20";
  return {
    groups: [
      {
        title: "The card",
        fields: [
          {
            name: "service",
            label: "Service",
            kind: "text",
            value: card?.service,
            required: true,
            hint: "as you call it",
          },
          {
            name: "validFrom",
            label: "Holds from",
            kind: "day",
            value: card?.validFrom ?? today,
            required: true,
          },
          {
            name: "endBefore",
            label: "End the card before it on the day before",
            kind: "tick",
            onlyWhenAsked: true,
          },
          {
            name: "validTo",
            label: "Last day",
            kind: "day",
            value: card?.validTo ?? undefined,
            hint: "empty: until further notice",
          },
          {
            name: "source",
            label: "Source",
            kind: "text",
            value: kept?.source ?? undefined,
            hint: "the carrier's list of 1 July, page 4",
          },
          { name: "readOn", label: "Copied on", kind: "day", value: kept?.readOn ?? today },
        ],
      },
      {
        title: "Limits, rule for size, fees",
        note: "As the carrier's list has them; leave empty what it does not have.",
        fields: ruleFields(card, digits),
        isFolded: true,
      },
    ],
    fields: [
      {
        name: "table",
        label: "Table of prices",
        kind: "lines",
        value: band === undefined ? undefined : rateTableText(band, card?.zones ?? [], digits),
        required: true,
        hint: `Copy it from the carrier's list. First row: up to  ${names}. Then a row for each weight step: 8 oz  ${prices}. Two spaces or a tab between; a dash where there is no price. A last row “each further 1 lb  0.85” holds beyond.`,
      },
    ],
  };
}

function ruleFields(card: RateCard | undefined, digits: number): FormField[] {
  const walls = card?.bands[0]?.walls;
  const rule = card?.dimensional ?? null;
  return [
    {
      name: "longest",
      label: "Longest side, at most",
      kind: "text",
      value: wordsOf(walls?.longest),
      hint: "22 in",
    },
    {
      name: "lengthAndGirth",
      label: "Length and girth, at most",
      kind: "text",
      value: wordsOf(walls?.lengthAndGirth),
      hint: "108 in: the longest side, and once round the other two",
    },
    {
      name: "sides",
      label: "Three sides, at most",
      kind: "text",
      value: walls?.sides?.map(measureWords).join(" x "),
      hint: "45 x 35 x 16 cm",
    },
    { name: "heaviest", label: "Heaviest", kind: "text", value: wordsOf(walls?.weight), hint: "70 lb" },
    {
      name: "weightUpTo",
      label: "Weights go up to whole",
      kind: "text",
      value: wordsOf(card?.roundUpTo),
      hint: "1 lb; empty: the next step decides",
    },
    {
      name: "divisor",
      label: "Size counts: divisor",
      kind: "text",
      value: rule === null ? undefined : divisorText(rule),
      hint: "139 in³ per lb, 5000 cm³ per kg; empty: size adds no weight",
    },
    {
      name: "moreThan",
      label: "Size counts for more than",
      kind: "text",
      value: rule?.floor == null ? undefined : `${exactNumber(rule.floor)} ${rule.lengthUnit}³`,
      hint: "1728 in³; empty: always",
    },
    {
      name: "eachSide",
      label: "Each side is rounded",
      kind: "text",
      value: rule === null ? undefined : roundingText(rule.sides, rule.lengthUnit),
      hint: "up to 1 in, nearest 1 in, down to 0.25 in; empty: as it is",
    },
    {
      name: "sizeWeight",
      label: "The weight by size is rounded",
      kind: "text",
      value: rule === null ? undefined : roundingText(rule.result, rule.massUnit),
      hint: "up to 1 lb; empty: as it is",
    },
    {
      name: "fees",
      label: "Fees",
      kind: "lines",
      value: card?.fees.map((fee) => feeLine(fee, digits)).join("\n"),
      hint: "One a line: Long parcel: 4.50; longest side over 24 in. Or: volume over 3456 in³, second side over, but not over, from and to a day.",
    },
  ];
}

function wordsOf(measure: TypedMeasure<string> | null | undefined): string | undefined {
  return measure == null ? undefined : measureWords(measure);
}
