import { billableLines } from "#lib/postage/billable-weight";
import { billableQuestion, type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import type { ReckoningLine } from "#lib/postage/reckoning-line";
import type { StepHit } from "#lib/postage/step-for";
import { stepWords } from "#lib/postage/step-words";
import { measureWords } from "#lib/postage/typed-measure";
import { formatDay } from "#lib/units/day-text";
import { minorDigitsOf } from "#lib/units/minor-digits";
import { formatMoney } from "#lib/units/money";

/** A rating with the way to it, to be printed in order; where there is no price, the reasons and the way out. */
export type ParcelPrice = Rating & { readonly explanation: readonly ReckoningLine[] };

/**
 * What a parcel costs to send by a card. An estimate: the carrier's own list, scale and tape decide.
 *
 * @param question card, zone, packed weight, outside sizes and day
 * @returns price in minor units with step, fees and explanation, or why there is none
 */
export function parcelPrice(question: ParcelQuestion): ParcelPrice {
  const rating = ratedParcel(question);
  return { ...rating, explanation: explained(question, rating) };
}

function explained(question: ParcelQuestion, rating: Rating): ReckoningLine[] {
  const { card, zone } = question;
  switch (rating.kind) {
    case "priced":
      return pricedLines(question, rating);
    case "noPrice":
      return [
        ...weightLines(question, rating.step),
        line(
          "Price",
          "none",
          `Zone ${zone} has no price ${stepWords(rating.step)}. Add it to the card, or choose another service.`,
        ),
      ];
    case "tooHeavy":
      return rating.reasons.map((reason) =>
        line("Too heavy", "not carried", `${reason} Choose another service, or pack it as two parcels.`),
      );
    case "tooLarge":
      return rating.reasons.map((reason) =>
        line("Too large", "not carried", `${reason} Choose a smaller carton or another service.`),
      );
    case "noCard":
      return [line("Rate card", "none", `${daysWords(question)} Add the card of that day.`)];
    case "noZone":
      return [line("Zone", "none", `The card has no zone ${zone}; it has ${card.zones.join(", ")}.`)];
  }
}

function pricedLines(question: ParcelQuestion, rating: Rating & { kind: "priced" }): ReckoningLine[] {
  const { card, zone } = question;
  const digits = minorDigitsOf(card.currency);
  const money = (minor: number): string => formatMoney(minor, card.currency, digits);
  return [
    ...weightLines(question, rating.step),
    line("Step", stepWords(rating.step), null),
    line("Price", money(rating.stepMinor), `Zone ${zone}, ${card.service}${furtherWords(rating.step)}.`),
    ...rating.fees.map(({ name, minor }) => line("Fee", money(minor), name)),
    line("Postage", money(rating.minor), `By the card from ${formatDay(card.validFrom, { year: true })}.`),
  ];
}

function weightLines(question: ParcelQuestion, { band, stepAt }: StepHit): ReckoningLine[] {
  const unit = band.steps[stepAt]?.upTo.unit ?? "kg";
  const known =
    question.size === null
      ? [
          line(
            "Outside sizes",
            "not known",
            "Size limits, dimensional weight and fees for size are left out.",
          ),
        ]
      : [];
  return [...known, ...billableLines(billableQuestion(question, band), unit)];
}

function furtherWords({ band, further }: StepHit): string {
  if (further === 0 || band.beyond.kind === "notCarried") return "";
  return `, with ${further} × ${measureWords(band.beyond.each)} beyond the last step`;
}

function daysWords({ card, shipDay }: ParcelQuestion): string {
  const until = card.validTo === null ? "on" : `to ${formatDay(card.validTo, { year: true })}`;
  return `The card of ${card.service} holds from ${formatDay(card.validFrom, { year: true })} ${until}, not on ${formatDay(shipDay, { year: true })}.`;
}

function line(label: string, value: string, note: string | null): ReckoningLine {
  return { label, value, note };
}
