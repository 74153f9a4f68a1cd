import { STARTER_CARTONS } from "#prisma/starter/starter-cartons";
import type { StarterSupply } from "#prisma/starter/starter-supply";
import { STARTER_WRAPS } from "#prisma/starter/starter-wraps";

/** Every supply of the starter recipes: wraps first, then cartons from small to large. */
export const STARTER_SUPPLIES: readonly StarterSupply[] = [...STARTER_WRAPS, ...STARTER_CARTONS];

/**
 * Finds a starter supply.
 *
 * @param id - the supply's id
 * @returns the supply
 * @throws RangeError if there is none of that id
 * @example starterSupply("tissue").unit; // "sheet"
 */
export function starterSupply(id: string): StarterSupply {
  const found = STARTER_SUPPLIES.find((supply) => supply.id === id);
  if (found === undefined) {
    throw new RangeError(`starterSupply requires the id of a starter supply, got ${id}`);
  }
  return found;
}
