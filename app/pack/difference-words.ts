import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { formatMoney } from "#lib/units/money";
import { oddsWords } from "./odds-words";
import { STYLE_WORDS } from "./parcel-words";
import type { BenchWay } from "./style-difference";

/** How a shop writes money and weights. */
type ShopWriting = { readonly currency: string; readonly minorDigits: number; readonly measures: Measures };

/**
 * What packing the parcel in the other style would cost or save, in one sentence.
 *
 * @param here the parcel as it is
 * @param other in the other style, by its card
 * @param shop how it writes money and weights
 * @param zone name of the zone that it goes to; null: over the shop's zones
 * @returns "On bubble it would cost $0.75 less in materials and postage: $0.81 more for materials, $1.56 less postage expected to Far; 4.4 oz lighter."
 */
export function differenceWords(
  here: BenchWay,
  other: BenchWay,
  shop: ShopWriting,
  zone: string | null,
): string {
  const materials = Math.round(other.materialsMinor - here.materialsMinor);
  const postage = Math.round(other.postageMinor - here.postageMinor);
  const all = materials + postage;
  const grams = other.likelyMg - here.likelyMg;
  const money = (minor: number) => formatMoney(Math.abs(minor), shop.currency, shop.minorDigits);
  const moved = (minor: number) => `${money(minor)} ${minor > 0 ? "more" : "less"}`;
  const mass = formatMass(milligrams(Math.abs(Math.round(grams))), shop.measures);
  const where = zone === null ? "over your zones" : `to ${zone}`;
  const parts = [
    materials === 0 ? "the same for materials" : `${moved(materials)} for materials`,
    postage === 0 ? `as much postage expected ${where}` : `${moved(postage)} postage expected ${where}`,
  ];
  const total = all === 0 ? "as much" : moved(all);
  return `On ${STYLE_WORDS[other.style]} it would cost ${total} in materials and postage: ${parts.join(", ")}; ${mass} ${grams > 0 ? "heavier" : "lighter"}.`;
}

/**
 * Which postage steps a parcel pays in a style, with their odds.
 *
 * @param way the parcel in a style
 * @returns "On paper: up to 3 lb 5 in 100, up to 4 lb 95 in 100."
 */
export function stepsWords({ style, steps }: BenchWay): string {
  return `On ${STYLE_WORDS[style]}: ${steps.map(({ label, chance }) => `${label} ${oddsWords(chance)}`).join(", ")}.`;
}
