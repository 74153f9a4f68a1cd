import { formatMoney } from "#lib/units/money";
import { formatVolume } from "#lib/units/volume";
import type { ShopWords } from "./choice-words";
import type { ShelfCarton } from "./shelf-carton";

const VALUE_PER_MINOR = 10_000;

/**
 * The first line of Cartons: what sits, and what it holds.
 *
 * @param cartons the sizes of the shelf
 * @param shop how it writes money and sizes
 * @returns one sentence
 */
export function cartonsFinding(cartons: readonly ShelfCarton[], shop: ShopWords): string {
  if (cartons.length === 0) return "No cartons yet: add the sizes that stand on your shelf.";
  const sits = cartons.filter(({ idle, onHand }) => idle.ageing === "sits" && (onHand ?? 0) > 0);
  if (sits.length === 0) return nothingSits(cartons);
  const held = sits.reduce((sum, { onHand }) => sum + (onHand ?? 0), 0);
  const money = sits.reduce((sum, { idle }) => sum + (idle.money ?? 0), 0) / VALUE_PER_MINOR;
  const room = sits.reduce((sum, { idle }) => sum + (idle.roomMl ?? 0), 0);
  const which =
    sits.length === 1
      ? `One size of ${cartons.length} sits`
      : `${sits.length} sizes of ${cartons.length} sit`;
  const cartonsHeld = held === 1 ? "one carton" : `${held} cartons`;
  return `${which}: ${cartonsHeld}, ${formatMoney(Math.round(money), shop.currency, shop.minorDigits)} and ${formatVolume(Math.round(room), shop.measures)}.`;
}

function nothingSits(cartons: readonly ShelfCarton[]): string {
  const uncounted = cartons.filter(({ onHand }) => onHand === null).length;
  const slow = cartons.filter(({ idle }) => idle.ageing === "slow").length;
  const sizes = cartons.length === 1 ? "The one size" : `None of the ${cartons.length} sizes`;
  const rest = [
    ...(slow === 0 ? [] : [slow === 1 ? "one is slow" : `${slow} are slow`]),
    ...(uncounted === 0
      ? []
      : [uncounted === 1 ? "one was never counted" : `${uncounted} were never counted`]),
  ];
  const sits = cartons.length === 1 ? `${sizes} on the shelf does not sit` : `${sizes} on the shelf sits`;
  return rest.length === 0 ? `${sits}.` : `${sits}; ${rest.join(", ")}.`;
}
