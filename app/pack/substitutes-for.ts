import type { SupplyChoice } from "./packing-choices";

const MOST_SUBSTITUTES = 4;

/**
 * What may be reached for when a supply has run out: the same kind first, then other cushioning counted in the
 * same unit; what the book knows to be on the shelf stands before what it does not.
 * @param supply what the recipe asks for
 * @param supplies all supplies, in the shop's order
 * @returns at most four; never cartons, never the supply itself
 */
export function substitutesFor(
  supply: SupplyChoice,
  supplies: readonly SupplyChoice[],
): readonly SupplyChoice[] {
  const others = supplies.filter(
    (other) => other.id !== supply.id && other.kind !== "carton" && fits(other, supply),
  );
  return [...others].sort((one, other) => rank(one, supply) - rank(other, supply)).slice(0, MOST_SUBSTITUTES);
}

/** Tape closes and wadding fills: neither stands in for the other. */
function fits(other: SupplyChoice, supply: SupplyChoice): boolean {
  return (other.kind === "tape") === (supply.kind === "tape");
}

function rank(other: SupplyChoice, supply: SupplyChoice): number {
  const kind = other.kind === supply.kind ? 0 : 4;
  const unit = other.unit === supply.unit ? 0 : 2;
  const shelf = other.onHand !== null && other.onHand > 0 ? 0 : 1;
  return kind + unit + shelf;
}
