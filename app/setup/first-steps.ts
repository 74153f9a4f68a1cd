import type { Database } from "#prisma/client";
import { parcelsOf } from "#prisma/records/parcel-lists";
import { recipesOf } from "#prisma/records/recipes";
import { offersOf } from "#prisma/records/suppliers";
import { stockOf } from "#prisma/records/supplies";

/** One of the steps of a new shop's first ten minutes. */
export type FirstStep = { readonly words: string; readonly href: string; readonly isDone: boolean };

/**
 * The way of a new shop from nothing to its first week: recipes bring their supplies, a supplier brings the lead
 * time, a count brings the stock, and the first parcels bring the use that the answer needs. No price is needed.
 *
 * @param db the open database
 * @returns the steps in order
 */
export async function firstSteps(db: Database): Promise<FirstStep[]> {
  const [recipes, offers, stocks, parcels] = await Promise.all([
    recipesOf(db),
    offersOf(db),
    stockOf(db),
    parcelsOf(db, { limit: 1 }),
  ]);
  const isCounted = stocks.some((stock) => stock.countedAt !== null);
  return [
    {
      words: "Copy the recipes of what you sell; their supplies come along",
      href: "/recipes/start",
      isDone: recipes.length > 0,
    },
    {
      words: "Say who sells the supplies and how long a delivery takes",
      href: "/setup#suppliers",
      isDone: offers.length > 0,
    },
    {
      words: "Count what is on the shelf; skip what you are not sure of",
      href: "/supplies/count",
      isDone: isCounted,
    },
    {
      words: "Record the first parcels as you pack them; after one or two This week answers with a guess",
      href: "/pack",
      isDone: parcels.length > 0,
    },
  ];
}
