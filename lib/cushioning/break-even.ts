import type { WayCost } from "#lib/cushioning/way-cost";
import type { CushionStyle } from "#lib/packing/recipe-version";

/** At which price of a supply the choice between two ways turns. */
export type BreakEven =
  /** below this price, 1/10,000 minor unit a use unit, `below` is cheaper; above it `above` */
  | {
      readonly kind: "turns";
      readonly price: number;
      readonly below: CushionStyle;
      readonly above: CushionStyle;
    }
  /** even as a gift the supply does not make its style the cheaper one */
  | { readonly kind: "never"; readonly cheaper: CushionStyle }
  /** both take as much of it */
  | { readonly kind: "alike" };

/** What a break-even is reckoned from. */
type Priced = Pick<WayCost, "totalMinor"> & { readonly way: Pick<WayCost["way"], "style" | "takes"> };

const VALUE_PER_MINOR = 10_000;
/** Units of a supply that count as no difference. */
const ALIKE = 1e-9;

/**
 * The price of a supply at which two ways to pack a parcel cost the same. Both totals are straight lines over that price,
 * as neither weight nor postage depends on it: with the totals now, T, and the units taken, q, they meet at
 * price now + (T of one - T of the other) / (q of the other - q of one).
 *
 * @param one a way with its total at the price now
 * @param other another
 * @param supplyId the supply whose price moves
 * @param priceNow 1/10,000 minor unit a use unit, as it is in both totals; 0 where none is known
 * @returns where it turns
 * @example breakEven(paper, bubble, "large-bubble", 252_000) // turns at 330,000: 33 cents a square foot
 */
export function breakEven(one: Priced, other: Priced, supplyId: string, priceNow: number): BreakEven {
  const units = unitsOf(one, supplyId);
  const otherUnits = unitsOf(other, supplyId);
  if (Math.abs(units - otherUnits) < ALIKE) return { kind: "alike" };
  const [hungry, sparing] = units > otherUnits ? [one, other] : [other, one];
  const more = Math.abs(units - otherUnits);
  const price = priceNow + ((sparing.totalMinor - hungry.totalMinor) * VALUE_PER_MINOR) / more;
  if (price <= 0) return { kind: "never", cheaper: sparing.way.style };
  return { kind: "turns", price, below: hungry.way.style, above: sparing.way.style };
}

function unitsOf({ way }: Priced, supplyId: string): number {
  return way.takes.get(supplyId) ?? 0;
}

/**
 * What a way costs at another price of one supply.
 *
 * @param cost at the price now
 * @param supplyId the supply
 * @param priceNow 1/10,000 minor unit a use unit, as it is in the total
 * @param price the other price
 * @returns minor units
 * @example totalAtPrice(bubble, "large-bubble", 252_000, 300_000)
 */
export function totalAtPrice(cost: Priced, supplyId: string, priceNow: number, price: number): number {
  return cost.totalMinor + ((price - priceNow) * unitsOf(cost, supplyId)) / VALUE_PER_MINOR;
}
