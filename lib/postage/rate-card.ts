import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import type { RateFee } from "#lib/postage/rate-fee";
import type { SizeWalls } from "#lib/postage/size-walls";
import type { TypedMass } from "#lib/postage/typed-measure";
import type { Day } from "#lib/units/day";
import type { MinorUnits } from "#lib/units/money";

/** Prices in the order of the card's zones; null where the carrier gives none. */
export type ZonePrices = readonly (MinorUnits | null)[];

/** A weight step: what a parcel up to and including this weight costs. */
export type WeightStep = { readonly upTo: TypedMass; readonly prices: ZonePrices };

/** What holds for a weight over the last step; `perFurther` adds a price for each further unit begun. */
export type BeyondLastStep =
  | { readonly kind: "notCarried" }
  | { readonly kind: "perFurther"; readonly each: TypedMass; readonly prices: ZonePrices };

/**
 * A table of steps for parcels within its walls: "small parcel", "oversized", or the only one of a card. A parcel pays by
 * the first band of the card that takes its size and weight.
 */
export type RateBand = {
  readonly name: string;
  readonly walls: SizeWalls;
  /** whether the card's dimensional rule counts here */
  readonly countsSize: boolean;
  /** lightest first */
  readonly steps: readonly WeightStep[];
  readonly beyond: BeyondLastStep;
};

/** What one service costs from one day to another. */
export type RateCard = {
  /** in the seller's own words */
  readonly service: string;
  /** ISO 4217 code */
  readonly currency: string;
  readonly validFrom: Day;
  /** the last day on which it holds; null: until further notice */
  readonly validTo: Day | null;
  /** labels in the card's order; a higher one need not be farther away */
  readonly zones: readonly string[];
  readonly bands: readonly RateBand[];
  /** the billed weight goes up to whole multiples of this; null: to the next step */
  readonly roundUpTo: TypedMass | null;
  readonly dimensional: DimensionalRule | null;
  readonly fees: readonly RateFee[];
};
