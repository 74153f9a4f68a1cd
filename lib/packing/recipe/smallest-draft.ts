import { blockVolume } from "#lib/packing/block";
import type { CartonRoom } from "#lib/packing/fill/carton-room";
import type { DraftCarton, DraftRequest } from "#lib/packing/recipe/draft-request";
import { type DraftedRecipe, type DraftRefusal, draftedRecipe } from "#lib/packing/recipe/drafted-recipe";

/** A carton that was too small or too tight, with the room in it. */
export type TightCarton = { readonly cartonId: string; readonly room: CartonRoom };

/** A draft in the smallest carton that will do, or why there is none; the smaller ones that will not do beside it. */
export type SmallestDraft =
  | {
      readonly kind: "drafted";
      readonly carton: DraftCarton;
      readonly recipe: DraftedRecipe;
      readonly tight: readonly TightCarton[];
    }
  | { readonly kind: "no-carton"; readonly tight: readonly TightCarton[] }
  | Exclude<DraftRefusal, { readonly cartonId: string }>;

/**
 * Drafts a recipe in the smallest carton, by its inside, that leaves the cushion asked for.
 *
 * @param request - as for `draftedRecipe`, without the cartons
 * @param cartons - those to try, in any order; a single one is tried alone
 * @returns the draft; or that no carton will do; or what is wrong with the description or a supply
 * @throws RangeError as `draftedRecipe`
 * @example smallestDraft(mugOnPaper, [cube8, cube12]).kind // "drafted"
 */
export function smallestDraft(
  request: Omit<DraftRequest, "carton" | "outer">,
  cartons: readonly DraftCarton[],
): SmallestDraft {
  const bySize = cartons.toSorted((a, b) => blockVolume(a.inside) - blockVolume(b.inside));
  const tight: TightCarton[] = [];
  for (const carton of bySize) {
    const outcome = draftedRecipe({ ...request, carton, outer: null });
    if (outcome.kind === "drafted") return { kind: "drafted", carton, recipe: outcome, tight };
    if (!("cartonId" in outcome)) return outcome;
    tight.push({ cartonId: outcome.cartonId, room: outcome.room });
  }
  return { kind: "no-carton", tight };
}
