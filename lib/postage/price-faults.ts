import type { ZonePrices } from "#lib/postage/rate-card";
import { cardError, type RateCardFault } from "#lib/postage/rate-card-fault";

/**
 * Faults of the prices of one row: one for each zone, whole, not below zero.
 *
 * @param row as the message names it
 * @param zones labels of the card
 * @param prices in the order of the zones
 * @returns a note where the carrier is said to give no price
 */
export function priceFaults(row: string, zones: readonly string[], prices: ZonePrices): RateCardFault[] {
  const faults = zones.flatMap((zone, at) => priceFault(`${row}, zone ${zone}`, prices[at]));
  if (prices.length <= zones.length) return faults;
  const many = `${row}: there are ${prices.length} prices for ${zones.length} zones.`;
  return [...faults, cardError(`${many} Add the missing zone or take a price away.`)];
}

function priceFault(cell: string, price: ZonePrices[number] | undefined): RateCardFault[] {
  if (price === undefined) {
    return [cardError(`${cell}: the price is missing. Type it, or take the zone off this card.`)];
  }
  if (price === null) {
    const message = `${cell}: there is no price, so such a parcel is not sent there. Type it if the list has one.`;
    return [{ severity: "note", message }];
  }
  if (Number.isSafeInteger(price) && price >= 0) return [];
  return [
    cardError(
      `${cell}: a price must be zero or more, and whole in the smallest coin. Type what the list says.`,
    ),
  ];
}
