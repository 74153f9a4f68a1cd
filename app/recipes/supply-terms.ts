import type { SupplyTerms } from "#lib/packing/card-sum";
import type { Database } from "#prisma/client";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { type Supply, stockOf } from "#prisma/records/supplies";

/**
 * What the shop knows of its supplies: masses, book costs, and what buying them again costs.
 *
 * @param db the open database
 * @param supplies all supplies
 * @returns by supply; what is not known is null or not in it
 */
export async function supplyTerms(db: Database, supplies: readonly Supply[]): Promise<SupplyTerms> {
  const [stock, replacement] = await Promise.all([stockOf(db), replacementPrices(db)]);
  return {
    masses: new Map(supplies.map(({ id, massMg }) => [id, massMg])),
    book: new Map(stock.map(({ supplyId, unitCost }) => [supplyId, unitCost])),
    replacement,
  };
}
