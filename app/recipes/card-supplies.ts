import type { Supply } from "#prisma/records/supplies";
import type { CardSupply } from "./card-fields";

/**
 * The supplies that the form of a card is read with.
 *
 * @param supplies all supplies, those no longer used too
 * @returns what the form needs of each, by id
 */
export function cardSupplies(supplies: readonly Supply[]): ReadonlyMap<string, CardSupply> {
  return new Map(
    supplies.map(({ id, name, kind, useUnit, retired }) => [id, { name, kind, useUnit, retired }] as const),
  );
}
