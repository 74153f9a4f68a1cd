import { bandFaults } from "#lib/postage/band-faults";
import { feeFaults } from "#lib/postage/fee-faults";
import type { RateCard } from "#lib/postage/rate-card";
import { cardError, faultsOf, partOf, type RateCardFault } from "#lib/postage/rate-card-fault";
import type { Rounding } from "#lib/postage/ratio-rounding";
import { measureWords } from "#lib/postage/typed-measure";

/** A name longer than this fits on no screen. */
const MOST_SERVICE_LETTERS = 200;

/**
 * Everything that is wrong with a card, errors and warnings, in the card's order.
 *
 * @param card as typed or imported
 * @returns empty for a sound card
 */
export function rateCardFaults(card: RateCard): RateCardFault[] {
  return [
    ...headFaults(card),
    ...zoneFaults(card),
    ...(card.bands.length === 0 ? [cardError("The card has no prices. Add a weight step.")] : []),
    ...bandNameFaults(card),
    ...card.bands.flatMap((band, at) => bandFaults(card, band, at)),
    ...faultsOf(partOf("size"), dimensionalFaults(card)),
    ...card.fees.flatMap((fee, at) => faultsOf(partOf("fee", at), feeFaults(card, fee))),
  ];
}

function headFaults({ service, currency, validFrom, validTo, roundUpTo }: RateCard): RateCardFault[] {
  const faults: RateCardFault[] = [];
  if (service.trim() === "") faults.push(cardError("The service has no name. Name it as you call it."));
  if (service.length > MOST_SERVICE_LETTERS) {
    const letters = `${service.length} letters; at most ${MOST_SERVICE_LETTERS} can be shown`;
    faults.push(cardError(`The name of the service has ${letters}. Shorten it.`));
  }
  if (!/^[A-Z]{3}$/.test(currency)) {
    faults.push(cardError(`The currency "${currency}" is no code of three capitals. Type one such as EUR.`));
  }
  if (validTo !== null && validTo < validFrom) {
    faults.push(cardError(`The last day ${validTo} is before the first, ${validFrom}. Mend one of them.`));
  }
  if (roundUpTo !== null && roundUpTo.value.numerator <= 0n) {
    const typed = measureWords(roundUpTo);
    faults.push(
      cardError(`Weights cannot be rounded up to ${typed}. Type a weight above zero or leave it empty.`),
    );
  }
  return faults;
}

function zoneFaults({ zones }: RateCard): RateCardFault[] {
  if (zones.length === 0) return [cardError("The card has no zone. Add one; a single price is one zone.")];
  return zones.flatMap((zone, at) => {
    if (zone.trim() === "") return [cardError(`Zone ${at + 1} has no name. Name it or take it away.`)];
    return zones.indexOf(zone) === at
      ? []
      : [cardError(`Zone ${zone} stands there twice. Rename one or take it away.`)];
  });
}

function bandNameFaults({ bands }: RateCard): RateCardFault[] {
  if (bands.length < 2) return [];
  return bands.flatMap(({ name }, at) => {
    if (name.trim() === "")
      return [cardError(`Band ${at + 1} has no name. Name it, so that the bands can be told apart.`)];
    return bands.findIndex((each) => each.name === name) === at
      ? []
      : [cardError(`Two bands are called ${name}. Rename one.`)];
  });
}

function dimensionalFaults({ dimensional: rule, zones }: RateCard): RateCardFault[] {
  if (rule === null) return [];
  const positive = [
    ["divisor", rule.divisor],
    ["factor for what is no box", rule.shapeFactor],
    ["most weight by size", rule.atMost],
    ["rounding of sides", multiplesOf(rule.sides)],
    ["rounding of the weight", multiplesOf(rule.result)],
  ] as const;
  const lost = (rule.zones ?? []).filter((zone) => !zones.includes(zone));
  return [
    ...positive.flatMap(([name, value]) =>
      value !== null && value.numerator <= 0n
        ? [cardError(`Weight by size, ${name}: it must be above zero. Type what the carrier says.`)]
        : [],
    ),
    ...(rule.floor !== null && rule.floor.numerator < 0n
      ? [
          cardError(
            "Weight by size, volume over which it counts: it cannot be below zero. Leave it empty for none.",
          ),
        ]
      : []),
    ...lost.map((zone) =>
      cardError(`Weight by size, zone ${zone}: the card has no such zone. Add it or mend its name.`),
    ),
  ];
}

function multiplesOf(rounding: Rounding) {
  return rounding.kind === "none" ? null : rounding.to;
}
