import { cardOn } from "#lib/postage/card-on";
import { countsSize } from "#lib/postage/counts-size";
import { neighbourSteps } from "#lib/postage/neighbour-steps";
import { type ParcelPrice, parcelPrice } from "#lib/postage/parcel-price";
import type { RateCard } from "#lib/postage/rate-card";
import { type ParcelQuestion, ratedParcel } from "#lib/postage/rated-parcel";
import { ratioText } from "#lib/postage/ratio";
import type { ReckoningLine } from "#lib/postage/reckoning-line";
import { sizeSaving } from "#lib/postage/size-saving";
import { stepWords } from "#lib/postage/step-words";
import { formatDay } from "#lib/units/day-text";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { formatMoney } from "#lib/units/money";

/** What a service would cost, and what would change it. */
export type TriedService = {
  readonly service: string;
  /** minor units; null: not carried, or no price */
  readonly minor: number | null;
  /** whether the card counts size and none is known, so that it may cost more or not be carried */
  readonly isSizeOpen: boolean;
  /** the step paid, or that it is not carried */
  readonly headline: string;
  readonly advice: readonly string[];
  readonly lines: readonly ReckoningLine[];
};

/** How money and weights are shown. */
export type ShownTerms = {
  readonly currency: string;
  readonly minorDigits: number;
  readonly measures: Measures;
};

/**
 * Tries a parcel with one service.
 *
 * @param service as the cards name it
 * @param cards cards of all services, their zones names
 * @param parcel weight, size, zone and day
 * @param shown how money and weights are shown
 */
export function triedService(
  service: string,
  cards: readonly RateCard[],
  parcel: Omit<ParcelQuestion, "card">,
  shown: ShownTerms,
): TriedService {
  const found = cardOn(cards, service, parcel.shipDay);
  if (found.kind !== "card") return noCard(service, parcel, found.kind === "hole" ? found : null);
  const question = { ...parcel, card: found.card };
  const price = parcelPrice(question);
  const minor = price.kind === "priced" ? price.minor : null;
  const isSizeOpen = parcel.size === null && countsSize(found.card);
  return {
    service,
    minor,
    isSizeOpen,
    headline: `${headlineOf(price)}${minor !== null && isSizeOpen ? " Its size counts here: write three sides or choose a carton to know." : ""}`,
    advice: price.kind === "priced" ? adviceOf(question, shown) : [],
    lines: price.explanation,
  };
}

function noCard(
  service: string,
  { shipDay }: Pick<ParcelQuestion, "shipDay">,
  hole: {
    readonly endedOn: ParcelQuestion["shipDay"] | null;
    readonly startsOn: ParcelQuestion["shipDay"] | null;
  } | null,
): TriedService {
  const full = (on: ParcelQuestion["shipDay"]) => formatDay(on, { year: true });
  const ended = hole?.endedOn == null ? "" : ` The last card ran out on ${full(hole.endedOn)}.`;
  const starts = hole?.startsOn == null ? "" : ` The next one begins on ${full(hole.startsOn)}.`;
  return {
    service,
    minor: null,
    isSizeOpen: false,
    headline: `No card holds on ${full(shipDay)}.${ended}${starts} Add the card of that day.`,
    advice: [],
    lines: [],
  };
}

function headlineOf(price: ParcelPrice): string {
  switch (price.kind) {
    case "priced":
      return `Pays the step ${stepWords(price.step)}.`;
    case "noPrice":
      return "The carrier gives no price for this zone and weight.";
    default:
      return "Not carried.";
  }
}

/** Less than this is nothing on a kitchen scale. */
const AT_LIMIT_MG = 1_500;

/** What a little less weight or a smaller size would save, and how near the next step is. */
function adviceOf(question: ParcelQuestion, { currency, minorDigits, measures }: ShownTerms): string[] {
  const rating = ratedParcel(question);
  if (rating.kind !== "priced") return [];
  const money = (minor: number) => formatMoney(minor, currency, minorDigits);
  const mass = (mg: number) => formatMass(milligrams(Math.max(1, Math.round(mg))), measures);
  const { cheaper, next } = neighbourSteps(question);
  const saving = sizeSaving(question, rating);
  const advice: string[] = [];
  if (cheaper !== null) {
    const saved = money(rating.minor - cheaper.minor);
    advice.push(
      `${lessWords(mass(Math.ceil(cheaper.mg)))} would save ${saved}: it would pay the step ${stepWords(cheaper.step)}.`,
    );
  }
  if (saving !== null) advice.push(sizeAdvice(question, saving, money));
  if (next !== null) {
    const room =
      next.mg < AT_LIMIT_MG
        ? "It stands at the limit of its step: a finer scale may read more"
        : `${mass(Math.floor(next.mg))} of room is left in this step`;
    advice.push(`${room}${nextWords(next, rating.minor, money)}.`);
  }
  return advice;
}

/** What is too little to be written in the shop's measures is not nothing. */
function lessWords(mass: string): string {
  return mass.startsWith("0 ") ? "A trace less" : `${mass} less`;
}

function sizeAdvice(
  { card, weight }: ParcelQuestion,
  { minor, savedMinor, mostVolume }: NonNullable<ReturnType<typeof sizeSaving>>,
  money: (minor: number) => string,
): string {
  const unit = card.dimensional?.lengthUnit ?? "in";
  const smaller =
    mostVolume === null
      ? "without the fees for its size"
      : `up to ${ratioText(mostVolume)} ${unit}³, its sides rounded,`;
  return mostVolume === null
    ? `Its size costs ${money(savedMinor)}: a smaller parcel, ${smaller} would cost ${money(minor)}.`
    : `Its size decides, not its ${weight.text}. A parcel of ${smaller} would cost ${money(minor)}: ${money(savedMinor)} less.`;
}

function nextWords(
  next: NonNullable<ReturnType<typeof neighbourSteps>["next"]>,
  minor: number,
  money: (minor: number) => string,
): string {
  if (next.minor === null) return "; beyond it the parcel is not carried";
  return `; the next costs ${money(Math.abs(next.minor - minor))} ${next.minor < minor ? "less" : "more"}`;
}
