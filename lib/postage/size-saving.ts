import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import { massIn, nanogramsOf } from "#lib/postage/exact-mass";
import type { RateCard } from "#lib/postage/rate-card";
import { type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { compareRatios, ratioProduct } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import type { Ratio } from "#lib/units/number-text";

/** What the size of a parcel costs it. */
export type SizeSaving = {
  /** what it would cost by its weight alone, and what that saves; minor units */
  readonly minor: number;
  readonly savedMinor: number;
  /** the most volume, its sides rounded, at which it costs no more; in the rule's cubic unit; null where no rule bites */
  readonly mostVolume: Ratio | null;
};

/**
 * What a smaller size would change: rule and fees for size left out.
 *
 * @param question of a parcel that has a price
 * @param rating its rating
 * @returns null where its size costs nothing
 */
export function sizeSaving(
  question: ParcelQuestion,
  rating: Rating & { readonly kind: "priced" },
): SizeSaving | null {
  const { card } = question;
  const fees = card.fees.filter(({ when }) => when.kind === "always");
  const bare = ratedParcel({ ...question, card: { ...card, dimensional: null, fees } });
  if (bare.kind !== "priced" || bare.minor >= rating.minor) return null;
  const rule = rating.billed.from === "dimensional" ? card.dimensional : null;
  return {
    minor: bare.minor,
    savedMinor: rating.minor - bare.minor,
    mostVolume: rule === null ? null : mostVolume(card, rule, bare.step.upToNg),
  };
}

/** What weighs, by its size and rounded as the card has it, no more than the step; or what the floor lets pass. */
function mostVolume({ roundUpTo }: Pick<RateCard, "roundUpTo">, rule: DimensionalRule, stepNg: Ratio): Ratio {
  const billed = roundUpTo === null ? stepNg : rounded(stepNg, { kind: "down", to: nanogramsOf(roundUpTo) });
  const step = massIn(billed, rule.massUnit);
  const weight = rule.result.kind === "none" ? step : rounded(step, { kind: "down", to: rule.result.to });
  const volume = ratioProduct(weight, rule.divisor);
  return rule.floor !== null && compareRatios(rule.floor, volume) > 0 ? rule.floor : volume;
}
