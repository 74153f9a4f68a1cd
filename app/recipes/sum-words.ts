import type { CardSum } from "#lib/packing/card-sum";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { formatMass, milligrams } from "#lib/units/mass";
import { costValue, formatMoney, minorOfCost, roundHalfEven } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { costWords } from "./cost-words";
import { styleTitle } from "./style-title";

type Terms = Pick<Shop, "currency" | "minorDigits" | "measures">;

/** A card with what one parcel by it weighs and costs. */
export type SummedStyle = { readonly style: CushionStyle; readonly sum: CardSum };

/**
 * What one parcel of a single piece weighs and costs by a card.
 *
 * @param sum what the card comes to
 * @param nameOf the name of a supply or of the piece
 * @param shop currency and measures
 * @param noCarton why no carton is in it, where none is
 * @returns sentences
 */
export function sumWords(
  sum: CardSum,
  nameOf: (id: string) => string,
  shop: Terms,
  noCarton = "as none is named",
): string {
  const { mass, book, replacement, cartons } = sum;
  const weight = formatMass(mass.mg, shop.measures);
  const carton = cartons.length === 0 ? `without a carton, ${noCarton}` : "with its carton";
  const least = mass.unknown.length === 0 ? "about" : "at least";
  const unweighed =
    mass.unknown.length === 0 ? "" : ` Never weighed: ${mass.unknown.map(nameOf).join(", ")}.`;
  const unpriced = [...new Set([...book.unknown, ...replacement.unknown])];
  const missing = unpriced.length === 0 ? "" : ` A price is missing: ${unpriced.map(nameOf).join(", ")}.`;
  return `One piece in its parcel weighs ${least} ${weight}, ${carton}. Material ${costWords(book, shop)} at its cost in the books, ${costWords(replacement, shop)} bought again today.${unweighed}${missing}`;
}

/**
 * How the other styles compare with one: "On bubble 268 g lighter, $0.42 dearer." Compared is what both know in full.
 *
 * @param own the card
 * @param others cards of the other styles
 * @param shop currency and measures
 * @returns a sentence for each other style
 */
export function comparedWords(own: CardSum, others: readonly SummedStyle[], shop: Terms): string {
  return others
    .map(({ style, sum }) => {
      const parts = [massPart(own, sum, shop), costPart(own, sum, shop)].filter((part) => part !== null);
      return parts.length === 0 ? "" : `${styleTitle(style)} ${parts.join(", ")}.`;
    })
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function massPart(own: CardSum, other: CardSum, { measures }: Terms): string | null {
  if (own.mass.unknown.join() !== other.mass.unknown.join()) return null;
  const more = other.mass.mg - own.mass.mg;
  if (more === 0) return "as heavy";
  return `${formatMass(milligrams(Math.abs(more)), measures)} ${more < 0 ? "lighter" : "heavier"}`;
}

function costPart(own: CardSum, other: CardSum, { currency, minorDigits }: Terms): string | null {
  if (own.replacement.unknown.length > 0 || other.replacement.unknown.length > 0) return null;
  const more = costValue(other.replacement.cost - own.replacement.cost);
  const minor = minorOfCost(more, roundHalfEven);
  if (minor === 0) return "as dear";
  const money = formatMoney(Math.abs(minor), currency, minorDigits);
  return `${money} ${minor < 0 ? "cheaper" : "dearer"}`;
}
