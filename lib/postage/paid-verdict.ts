import { cardOn } from "#lib/postage/card-on";
import { countsSize } from "#lib/postage/counts-size";
import { type ExactMass, milligramsOf } from "#lib/postage/exact-mass";
import type { ParcelSize } from "#lib/postage/parcel-size";
import { priceLadder } from "#lib/postage/price-ladder";
import type { RateCard } from "#lib/postage/rate-card";
import { type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import type { StepHit } from "#lib/postage/step-for";
import type { Day } from "#lib/units/day";

/** A parcel whose postage was paid; null where something is not known. */
export type PaidParcel = {
  readonly paidMinor: number;
  readonly shipDay: Day;
  readonly zone: string | null;
  readonly weight: ExactMass | null;
  readonly size: ParcelSize | null;
};

/** What would have cost exactly what was paid. */
export type PaidReason =
  | { readonly kind: "step"; readonly step: StepHit; readonly stepsUp: number }
  | { readonly kind: "zone"; readonly zone: string }
  /** the rule for size, though the parcel is not over its floor */
  | { readonly kind: "sizeCounted" }
  /** no rule for size and no fee for it */
  | { readonly kind: "sizeLeftOut" };

/** Why a payment can't be held against a card. */
export type NotTold = "noWeight" | "noZone" | "noCard" | "zoneOffCard" | "noSize" | "notCarried";

/** What a payment is, held against the card of its day. */
export type PaidVerdict =
  | { readonly kind: "agrees"; readonly service: string; readonly question: ParcelQuestion }
  | {
      readonly kind: "over" | "under";
      readonly byMinor: number;
      readonly cardMinor: number;
      readonly question: ParcelQuestion;
      readonly reason: PaidReason | null;
    }
  | { readonly kind: "notTold"; readonly why: NotTold };

/** Steps up and down that are tried as the reason. */
const STEPS_TRIED = 3;

/**
 * Holds what was paid against the rate cards. A parcel does not say by which service it went: where the price of any of
 * them is what was paid, it agrees; else it is held against the main one. Not a coin of difference is let pass.
 *
 * @param parcel what was paid, and what is known of it
 * @param cards cards without faults, of all services and days
 * @param services the shop's services, the main one first
 */
export function paidVerdict(
  parcel: PaidParcel,
  cards: readonly RateCard[],
  services: readonly string[],
): PaidVerdict {
  const answers = services.map((service) => answerOf(parcel, cards, service));
  const same = answers.find((each) => each.kind === "priced" && each.minor === parcel.paidMinor);
  if (same?.kind === "priced")
    return { kind: "agrees", service: same.question.card.service, question: same.question };
  const [main] = answers;
  if (main === undefined) return { kind: "notTold", why: "noCard" };
  if (main.kind === "notTold") return main;
  const byMinor = Math.abs(parcel.paidMinor - main.minor);
  return {
    kind: parcel.paidMinor > main.minor ? "over" : "under",
    byMinor,
    cardMinor: main.minor,
    question: main.question,
    reason: reasonFor(main.question, parcel.paidMinor),
  };
}

type Answer =
  | { readonly kind: "priced"; readonly minor: number; readonly question: ParcelQuestion }
  | { readonly kind: "notTold"; readonly why: NotTold };

function answerOf(
  { shipDay, zone, weight, size }: PaidParcel,
  cards: readonly RateCard[],
  service: string,
): Answer {
  const found = cardOn(cards, service, shipDay);
  if (found.kind !== "card") return { kind: "notTold", why: "noCard" };
  if (weight === null) return { kind: "notTold", why: "noWeight" };
  if (zone === null) return { kind: "notTold", why: "noZone" };
  const { card } = found;
  if (!card.zones.includes(zone)) return { kind: "notTold", why: "zoneOffCard" };
  if (size === null && countsSize(card)) return { kind: "notTold", why: "noSize" };
  const question = { card, zone, weight, size, shipDay };
  const rating = ratedParcel(question);
  return rating.kind === "priced"
    ? { kind: "priced", minor: rating.minor, question }
    : { kind: "notTold", why: "notCarried" };
}

/** The first of step, zone and size that explains the payment to the coin. */
function reasonFor(question: ParcelQuestion, paidMinor: number): PaidReason | null {
  return (
    stepReason(question, paidMinor) ?? zoneReason(question, paidMinor) ?? sizeReason(question, paidMinor)
  );
}

function stepReason(question: ParcelQuestion, paidMinor: number): PaidReason | null {
  const mg = milligramsOf(question.weight.ng);
  const priced = priceLadder(question, mg * 2).filter(({ rating }) => rating.kind === "priced");
  const own = priced.findIndex(({ upToMg }) => mg <= upToMg);
  for (let away = 1; own >= 0 && away <= STEPS_TRIED; away += 1) {
    for (const at of [own + away, own - away]) {
      const rating = at < 0 ? undefined : priced[at]?.rating;
      if (rating?.kind === "priced" && rating.minor === paidMinor) {
        return { kind: "step", step: rating.step, stepsUp: at - own };
      }
    }
  }
  return null;
}

function zoneReason(question: ParcelQuestion, paidMinor: number): PaidReason | null {
  const zone = question.card.zones.find(
    (each) => each !== question.zone && isPrice(ratedParcel({ ...question, zone: each }), paidMinor),
  );
  return zone === undefined ? null : { kind: "zone", zone };
}

function sizeReason({ card, ...question }: ParcelQuestion, paidMinor: number): PaidReason | null {
  const { dimensional } = card;
  const isPaid = (changed: RateCard) => isPrice(ratedParcel({ ...question, card: changed }), paidMinor);
  if (dimensional !== null && isPaid({ ...card, dimensional: { ...dimensional, floor: null } })) {
    return { kind: "sizeCounted" };
  }
  const fees = card.fees.filter(({ when }) => when.kind === "always");
  return isPaid({ ...card, dimensional: null, fees }) ? { kind: "sizeLeftOut" } : null;
}

function isPrice(rating: Rating, minor: number): boolean {
  return rating.kind === "priced" && rating.minor === minor;
}
