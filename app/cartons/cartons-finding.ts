import type { Measures } from "#lib/units/measures";
import { formatMoney } from "#lib/units/money";
import { formatVolume } from "#lib/units/volume";
import type { ShelfCarton } from "./shelf-carton";

const VALUE_PER_MINOR = 10_000;

/** How a shop writes money and sizes. */
export type ShopWords = {
  readonly currency: string;
  readonly minorDigits: number;
  readonly measures: Measures;
};

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
  const sizes = cartons.length === 1 ? "The one size" : `All ${cartons.length} sizes`;
  if (sits.length === 0)
    return `${sizes} of carton on the shelf are in use.`.replace(
      "size of carton on the shelf are",
      "size on the shelf is",
    );
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
