import { holdsOn } from "#lib/postage/card-on";
import { nanogramsOf } from "#lib/postage/exact-mass";
import { longestFirst, type ParcelSize, sidesIn } from "#lib/postage/parcel-size";
import type { FeeCondition, FeeGroup, RateFee } from "#lib/postage/rate-fee";
import { compareRatios, ratioProduct } from "#lib/postage/ratio";
import type { Day } from "#lib/units/day";
import type { MinorUnits } from "#lib/units/money";
import type { Ratio } from "#lib/units/number-text";

/** A fee that falls on a parcel. */
export type ChargedFee = { readonly name: string; readonly minor: MinorUnits };

/** What decides which fees fall on a parcel. */
export type FeeQuestion = {
  readonly zone: string;
  /** the weight step that the parcel pays, in nanograms */
  readonly stepNg: Ratio;
  /** null where it is not known: then no fee for size is charged */
  readonly size: ParcelSize | null;
  readonly shipDay: Day;
};

/**
 * The fees that fall on a parcel; they add up. A fee by weight looks at the step, so 3.2 lb pays as 4 lb.
 *
 * @param fees of the card
 * @param question zone, step, size and day
 * @returns in the card's order
 */
export function parcelFees(fees: readonly RateFee[], question: FeeQuestion): ChargedFee[] {
  return chargedFees(zoneFees(fallingFees(fees, question), question.zone), question.stepNg);
}

/**
 * The fees that fall on a size and a day, whatever the zone and the weight.
 *
 * @param fees of the card
 * @param question size and day
 */
export function fallingFees(
  fees: readonly RateFee[],
  { size, shipDay }: Pick<FeeQuestion, "size" | "shipDay">,
): readonly RateFee[] {
  return fees.filter((fee) => isInSeason(fee, shipDay) && falls(fee.when, size));
}

/** The amounts of a fee in one zone. */
export type ZoneFee = { readonly name: string; readonly rows: FeeGroup["rows"] };

/** The amounts of falling fees in one zone; fees that the zone does not pay are left out. */
export function zoneFees(falling: readonly RateFee[], zone: string): readonly ZoneFee[] {
  return falling.flatMap(({ name, groups }) => {
    const group = groups.find(({ zones }) => zones === null || zones.includes(zone));
    return group === undefined ? [] : [{ name, rows: group.rows }];
  });
}

/**
 * What of the fees of a zone is charged for a step.
 *
 * @param fees of the zone
 * @param stepNg the step, nanograms
 */
export function chargedFees(fees: readonly ZoneFee[], stepNg: Ratio): ChargedFee[] {
  return fees.flatMap(({ name, rows }) => {
    const row = rows.find(({ upTo }) => upTo === null || compareRatios(stepNg, nanogramsOf(upTo)) <= 0);
    return row === undefined ? [] : [{ name, minor: row.minor }];
  });
}

function isInSeason({ validFrom, validTo }: RateFee, shipDay: Day): boolean {
  return holdsOn({ validFrom: validFrom ?? shipDay, validTo }, shipDay);
}

function falls(when: FeeCondition, size: ParcelSize | null): boolean {
  if (when.kind === "always") return true;
  if (size === null) return false;
  if (when.kind === "volume") {
    return compareRatios(ratioProduct(...sidesIn(size, when.unit)), when.over) > 0;
  }
  return isSideOver(size, when);
}

function isSideOver(size: ParcelSize, { which, over, upTo }: FeeCondition & { kind: "side" }): boolean {
  const at = which === "longest" ? 0 : 1;
  const isPast = (limit: NonNullable<typeof upTo>): boolean =>
    compareRatios(longestFirst(sidesIn(size, limit.unit))[at], limit.value) > 0;
  return isPast(over) && !(upTo !== null && isPast(upTo));
}
