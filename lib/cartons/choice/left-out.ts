import type { NoFitReason } from "#lib/cartons/fit/no-fit-reason";
import type { FitTries } from "#lib/cartons/fit/packing-search";
import type { LoadLimit } from "#lib/cartons/strength/load-limit";
import type { InnerReason } from "#lib/cartons/strength/outer-carton";

/** Why a carton is not offered. */
export type LeftOutReason =
  /** the load fits, but as the outer carton it is none: an inner box only */
  | { readonly kind: "innerOnly"; readonly reason: InnerReason }
  /** the load fits, but is over this limit, the one that bites first */
  | { readonly kind: "over"; readonly limit: LoadLimit }
  /** the load fits and is carried, but no postage is known for this size, while it is for others */
  | { readonly kind: "noPostage" }
  /** it would save so much, but it is not there, and that is within the margin; 1/10,000 minor unit */
  | { readonly kind: "notOnHand"; readonly savesValue: number }
  /** nothing found and nothing proven: counts as not fitting */
  | { readonly kind: "notProven"; readonly tried: FitTries }
  | { readonly kind: "doesNotFit"; readonly reason: NoFitReason };

export type LeftOutCarton = { readonly cartonId: string; readonly reason: LeftOutReason };

/** More names than these are no help at the bench. */
const MOST_LEFT_OUT = 4;

const TELLING: Readonly<Record<LeftOutReason["kind"], number>> = {
  over: 0,
  innerOnly: 0,
  noPostage: 1,
  notOnHand: 2,
  notProven: 3,
  doesNotFit: 4,
};

/**
 * The few cartons worth naming among those that are not offered: first those that the load fits and that may not carry it,
 * last those that it does not fit.
 *
 * @param leftOut in the order of what they would have cost
 * @returns at most four, equal reasons in the order given
 */
export function mostTelling(leftOut: readonly LeftOutCarton[]): readonly LeftOutCarton[] {
  const telling = ({ reason }: LeftOutCarton): number => TELLING[reason.kind];
  return leftOut.toSorted((a, b) => telling(a) - telling(b)).slice(0, MOST_LEFT_OUT);
}
