import { type BillableQuestion, type BillableWeight, billableWeight } from "#lib/postage/billable-weight";
import { holdsOn } from "#lib/postage/card-on";
import type { ExactMass } from "#lib/postage/exact-mass";
import { type ChargedFee, parcelFees } from "#lib/postage/parcel-fees";
import type { ParcelSize } from "#lib/postage/parcel-size";
import type { RateBand, RateCard } from "#lib/postage/rate-card";
import { wallsHit } from "#lib/postage/size-walls";
import { type StepHit, stepFor, stepPrice } from "#lib/postage/step-for";
import { measureWords } from "#lib/postage/typed-measure";
import type { Day } from "#lib/units/day";
import { type MinorUnits, minorUnits } from "#lib/units/money";

/** A parcel whose postage is asked for. */
export type ParcelQuestion = {
  /** one without errors among its `rateCardFaults` */
  readonly card: RateCard;
  readonly zone: string;
  readonly weight: ExactMass;
  /** outside sizes; null where they are not known, then size limits, dimensional weight and fees for size are left out */
  readonly size: ParcelSize | null;
  readonly shipDay: Day;
};

/** A price in minor units, or why there is none. */
export type Rating =
  | {
      readonly kind: "priced";
      /** all together */
      readonly minor: MinorUnits;
      readonly stepMinor: MinorUnits;
      readonly step: StepHit;
      readonly billed: BillableWeight;
      readonly fees: readonly ChargedFee[];
    }
  /** the step is there, but not its price in this zone */
  | { readonly kind: "noPrice"; readonly step: StepHit }
  | { readonly kind: "tooHeavy"; readonly reasons: readonly string[] }
  | { readonly kind: "tooLarge"; readonly reasons: readonly string[] }
  | { readonly kind: "noCard" }
  | { readonly kind: "noZone" };

/**
 * Rates a parcel: the first band that takes its size and weight, the step, its price in the zone, and the fees.
 *
 * @param question card, zone, weight, size and day
 */
export function ratedParcel(question: ParcelQuestion): Rating {
  const { card, zone, size, shipDay } = question;
  const zoneAt = card.zones.indexOf(zone);
  if (!holdsOn(card, shipDay)) return { kind: "noCard" };
  if (zoneAt < 0) return { kind: "noZone" };
  const tries = card.bands.map((band, bandAt) => triedBand(question, band, bandAt));
  const taken = tries.find((each) => each.kind === "step");
  if (taken === undefined) return refusal(tries);
  const { step, billed } = taken;
  const stepMinor = stepPrice(step, zoneAt);
  if (stepMinor === null) return { kind: "noPrice", step };
  const fees = parcelFees(card.fees, { zone, stepNg: step.upToNg, size, shipDay });
  const minor = fees.reduce((sum, fee) => sum + fee.minor, Number(stepMinor));
  return { kind: "priced", minor: minorUnits(minor), stepMinor, step, billed, fees };
}

/**
 * What the billed weight in a band is worked out from.
 *
 * @param question card, zone, weight and size
 * @param band of the card
 */
export function billableQuestion(
  { card, zone, weight, size }: ParcelQuestion,
  band: RateBand,
): BillableQuestion {
  const rule = band.countsSize ? card.dimensional : null;
  const isCounted = rule !== null && (rule.zones === null || rule.zones.includes(zone));
  return { weight, size, rule: isCounted ? rule : null, roundUpTo: card.roundUpTo };
}

type Try =
  | { readonly kind: "step"; readonly step: StepHit; readonly billed: BillableWeight }
  | { readonly kind: "tooHeavy" | "tooLarge"; readonly reasons: readonly string[] };

function triedBand(question: ParcelQuestion, band: RateBand, bandAt: number): Try {
  const hits = wallsHit(band.walls, question.size, question.weight);
  const named = (words: string): string => (band.name === "" ? words : `${band.name}: ${words}`);
  if (hits.length > 0) {
    const isTooLarge = hits.some(({ wall }) => wall !== "weight");
    return { kind: isTooLarge ? "tooLarge" : "tooHeavy", reasons: hits.map(({ words }) => named(words)) };
  }
  const billed = billableWeight(billableQuestion(question, band));
  const step = stepFor(band, bandAt, billed.ng);
  if (step !== null) return { kind: "step", step, billed };
  const last = band.steps.at(-1);
  const most = last === undefined ? "it has no steps" : `its last step is ${measureWords(last.upTo)}`;
  const by = billed.from === "packed" ? "The packed weight" : "The weight by size";
  return { kind: "tooHeavy", reasons: [named(`${by} is over the last step; ${most}.`)] };
}

/** Too heavy where a band takes the size, for a lighter parcel of this size would go. */
function refusal(tries: readonly Try[]): Rating {
  const reasons = (kind: "tooHeavy" | "tooLarge"): string[] =>
    tries.flatMap((each) => (each.kind === kind ? each.reasons : []));
  const heavy = reasons("tooHeavy");
  return heavy.length > 0
    ? { kind: "tooHeavy", reasons: heavy }
    : { kind: "tooLarge", reasons: reasons("tooLarge") };
}
