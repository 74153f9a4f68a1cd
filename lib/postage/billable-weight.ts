import { type DimensionalRule, dimensionalLines, dimensionalWeight } from "#lib/postage/dimensional-weight";
import { type ExactMass, massIn, nanogramsOf, nanogramsPer } from "#lib/postage/exact-mass";
import type { ParcelSize } from "#lib/postage/parcel-size";
import { compareRatios, ratio, ratioProduct, ratioText } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import type { ReckoningLine } from "#lib/postage/reckoning-line";
import { type MassUnit, measureWords, type TypedMass } from "#lib/postage/typed-measure";
import type { Ratio } from "#lib/units/number-text";

/** What a billable weight is worked out from. */
export type BillableQuestion = {
  readonly weight: ExactMass;
  /** null where it is not known: then size does not count */
  readonly size: ParcelSize | null;
  /** null where size does not count */
  readonly rule: DimensionalRule | null;
  /** goes up to whole multiples of this; null: the next step of the card decides */
  readonly roundUpTo: TypedMass | null;
};

/** The weight that the price is looked up with. */
export type BillableWeight = {
  readonly ng: Ratio;
  readonly from: "packed" | "dimensional";
};

/**
 * Billable weight: the greater of packed and dimensional weight, then rounded up if the card says so.
 *
 * @param question weight, size and rules
 * @see a national post's manual: tests/reference/postage-dimensional.test.ts
 */
export function billableWeight({ weight, size, rule, roundUpTo }: BillableQuestion): BillableWeight {
  const dimensional = size === null || rule === null ? null : dimensionalNanograms(size, rule);
  const isBySize = dimensional !== null && compareRatios(dimensional, weight.ng) > 0;
  const greater = isBySize ? dimensional : weight.ng;
  return {
    ng: roundUpTo === null ? greater : rounded(greater, { kind: "up", to: nanogramsOf(roundUpTo) }),
    from: isBySize ? "dimensional" : "packed",
  };
}

/**
 * Dimensional weight in nanograms.
 *
 * @param size outside sizes
 * @param rule of the service
 * @returns null where the floor is not passed
 */
export function dimensionalNanograms(size: ParcelSize, rule: DimensionalRule): Ratio | null {
  const { weight } = dimensionalWeight(size, rule);
  return weight === null ? null : ratioProduct(weight, ratio(nanogramsPer(rule.massUnit)));
}

/**
 * How a billable weight was reached, for a screen.
 *
 * @param question weight, size and rules
 * @param unit in which the card gives its weights
 * @returns from the sizes as typed to the billable weight
 */
export function billableLines(question: BillableQuestion, unit: MassUnit): ReckoningLine[] {
  const { weight, size, rule, roundUpTo } = question;
  const { ng, from } = billableWeight(question);
  const isSizeUsed = size !== null && rule !== null;
  const compared = isSizeUsed
    ? `By ${from === "packed" ? "packed weight" : "size"}, the greater of the two`
    : `By packed weight; ${rule === null ? "size does not count" : "sizes are not known, which may cost more"}`;
  const raised = roundUpTo === null ? "" : `, up to a multiple of ${measureWords(roundUpTo)}`;
  const isAsPacked = from === "packed" && roundUpTo === null;
  return [
    ...(isSizeUsed ? dimensionalLines(size, rule) : []),
    { label: "Packed weight", value: weight.text, note: null },
    {
      label: "Billed weight",
      value: isAsPacked ? weight.text : `${ratioText(massIn(ng, unit))} ${unit}`,
      note: `${compared}${raised}.`,
    },
  ];
}
