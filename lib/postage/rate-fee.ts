import type { LengthUnit, TypedLength, TypedMass } from "#lib/postage/typed-measure";
import type { Day } from "#lib/units/day";
import type { MinorUnits } from "#lib/units/money";
import type { Ratio } from "#lib/units/number-text";

/** When a fee falls on a parcel; sizes are the outside sizes as measured, not rounded. */
export type FeeCondition =
  | { readonly kind: "always" }
  /** the longest or the second longest side is over a length, and not over another where one is given */
  | {
      readonly kind: "side";
      readonly which: "longest" | "second";
      readonly over: TypedLength;
      readonly upTo: TypedLength | null;
    }
  /** the box round the parcel takes more than so many cubic units */
  | { readonly kind: "volume"; readonly over: Ratio; readonly unit: LengthUnit };

/** Amounts for a group of zones, by the billed weight; the first row that the weight is not over counts. */
export type FeeGroup = {
  /** labels of the card; null: all zones */
  readonly zones: readonly string[] | null;
  /** `upTo` null: any weight; only in the last row */
  readonly rows: readonly { readonly upTo: TypedMass | null; readonly minor: MinorUnits }[];
};

/** A fee on top of the price; all that apply are added. */
export type RateFee = {
  readonly name: string;
  /** days on which it is charged, both included; null: as long as the card holds */
  readonly validFrom: Day | null;
  readonly validTo: Day | null;
  readonly when: FeeCondition;
  readonly groups: readonly FeeGroup[];
};
