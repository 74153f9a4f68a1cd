import { holdsOn } from "#lib/postage/card-on";
import { nanogramsOf } from "#lib/postage/exact-mass";
import { longestFirst, type ParcelSize, sidesIn } from "#lib/postage/parcel-size";
import type { FeeCondition, RateFee } from "#lib/postage/rate-fee";
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
  return fees.flatMap((fee) => {
    if (!isInSeason(fee, question.shipDay) || !falls(fee.when, question.size)) return [];
    const minor = amountOf(fee, question);
    return minor === null ? [] : [{ name: fee.name, minor }];
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

function amountOf({ groups }: RateFee, { zone, stepNg }: FeeQuestion): MinorUnits | null {
  const group = groups.find(({ zones }) => zones === null || zones.includes(zone));
  const row = group?.rows.find(({ upTo }) => upTo === null || compareRatios(stepNg, nanogramsOf(upTo)) <= 0);
  return row?.minor ?? null;
}
