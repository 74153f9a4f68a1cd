import { type ParcelSize, type Sides, sidesIn, sidesText } from "#lib/postage/parcel-size";
import { compareRatios, ratioProduct, ratioQuotient, ratioText } from "#lib/postage/ratio";
import { type Rounding, rounded, roundingWords } from "#lib/postage/ratio-rounding";
import type { ReckoningLine } from "#lib/postage/reckoning-line";
import type { LengthUnit, MassUnit } from "#lib/postage/typed-measure";
import type { Ratio } from "#lib/units/number-text";

/** How a service turns size into weight. */
export type DimensionalRule = {
  /** cubic `lengthUnit` for one `massUnit`: 139 for in³/lb, 5000 for cm³/kg */
  readonly divisor: Ratio;
  readonly lengthUnit: LengthUnit;
  readonly massUnit: MassUnit;
  /** counts only for volumes of more than this, in cubic `lengthUnit`; null: for all */
  readonly floor: Ratio | null;
  readonly sides: Rounding;
  readonly result: Rounding;
  /** what the volume of a parcel that is no box is multiplied by before the floor is looked at; null: as a box */
  readonly shapeFactor: Ratio | null;
  /** a dimensional weight above this counts as this, in `massUnit`; null: no such limit */
  readonly atMost: Ratio | null;
  /** zones in which it counts; null: in all */
  readonly zones: readonly string[] | null;
};

/** A dimensional weight with each step on the way; `weight` is null where the floor is not passed. */
type DimensionalWeight = {
  readonly sides: Sides;
  readonly volume: Ratio;
  /** volume over divisor before rounding */
  readonly quotient: Ratio;
  readonly weight: Ratio | null;
};

/**
 * Dimensional weight of a parcel: sides rounded, multiplied, held against the floor, divided, rounded.
 *
 * @param size outside sizes, at the widest
 * @param rule of the service
 * @returns sides and volume in the rule's unit of length and its cube, weights in its unit of mass
 * @see the posts' and couriers' rules: tests/reference/postage-dimensional.test.ts
 * @example dimensionalWeight(size, rule).weight // 14 for 12.2 x 12 x 12 in, 139 in³/lb, sides up, over 1,728 in³
 */
export function dimensionalWeight(size: ParcelSize, rule: DimensionalRule): DimensionalWeight {
  const [first, second, third] = sidesIn(size, rule.lengthUnit);
  const sides: Sides = [rounded(first, rule.sides), rounded(second, rule.sides), rounded(third, rule.sides)];
  const box = ratioProduct(...sides);
  const volume =
    size.shape === "other" && rule.shapeFactor !== null ? ratioProduct(box, rule.shapeFactor) : box;
  const quotient = ratioQuotient(volume, rule.divisor);
  const isUnderFloor = rule.floor !== null && compareRatios(volume, rule.floor) <= 0;
  const weight = isUnderFloor ? null : atMost(rounded(quotient, rule.result), rule.atMost);
  return { sides, volume, quotient, weight };
}

function atMost(weight: Ratio, limit: Ratio | null): Ratio {
  return limit !== null && compareRatios(weight, limit) > 0 ? limit : weight;
}

/**
 * The steps to a dimensional weight, for a screen.
 *
 * @param size outside sizes
 * @param rule of the service
 * @returns sides, rounded sides, volume, floor, and the weight if the floor is passed
 */
export function dimensionalLines(size: ParcelSize, rule: DimensionalRule): ReckoningLine[] {
  const { lengthUnit, massUnit, divisor, floor } = rule;
  const { sides, volume, quotient, weight } = dimensionalWeight(size, rule);
  const cube = `${lengthUnit}³`;
  const factor = size.shape === "other" ? rule.shapeFactor : null;
  const lines: ReckoningLine[] = [
    {
      label: "Outside sizes",
      value: size.typed ?? sidesText(sidesIn(size, lengthUnit), lengthUnit),
      note: "At the widest.",
    },
    {
      label: "Rounded",
      value: sidesText(sides, lengthUnit),
      note: `Each side ${roundingWords(rule.sides, lengthUnit)}.`,
    },
    {
      label: "Volume",
      value: `${ratioText(volume)} ${cube}`,
      note: factor === null ? null : `The box round it × ${ratioText(factor)}, as it is no box.`,
    },
  ];
  if (floor !== null) lines.push(floorLine(floor, cube, weight !== null));
  if (weight === null) return lines;
  lines.push({
    label: "Dimensional weight",
    value: `${ratioText(weight)} ${massUnit}`,
    note:
      `Volume ÷ ${ratioText(divisor)} ${cube} for each ${massUnit} = ${ratioText(quotient)}, ` +
      `${roundingWords(rule.result, massUnit)}${mostWords(rule)}.`,
  });
  return lines;
}

function mostWords({ atMost: most, massUnit }: DimensionalRule): string {
  return most === null ? "" : `, at most ${ratioText(most)} ${massUnit}`;
}

function floorLine(floor: Ratio, cube: string, isOver: boolean): ReckoningLine {
  const limit = `${ratioText(floor)} ${cube}`;
  return isOver
    ? { label: "Size counts", value: "yes", note: `It takes more than ${limit}.` }
    : { label: "Size counts", value: "no", note: `It does not take more than ${limit}.` };
}
