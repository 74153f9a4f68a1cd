import { type Block, blockVolume } from "#lib/packing/block";
import { boxInBox, leastOuter } from "#lib/packing/fill/box-in-box";
import type { CartonRoom } from "#lib/packing/fill/carton-room";
import type { DraftCarton, DraftRequest } from "#lib/packing/recipe/draft-request";
import { type DraftedRecipe, type DraftRefusal, draftedRecipe } from "#lib/packing/recipe/drafted-recipe";

/** A carton that was too small or too tight, with the room in it. */
export type TightCarton = { readonly cartonId: string; readonly room: CartonRoom };

/**
 * A draft in the smallest carton that will do, or why there is none; the smaller ones that will not do beside it. In a
 * box in a box `carton` is the inner one, `outer` the one around it with the room between the two; where no carton goes
 * round the inner one, `least` is the inside that would.
 */
export type SmallestDraft =
  | {
      readonly kind: "drafted";
      readonly carton: DraftCarton;
      readonly outer: { readonly carton: DraftCarton; readonly room: CartonRoom } | null;
      readonly recipe: DraftedRecipe;
      readonly tight: readonly TightCarton[];
    }
  | { readonly kind: "no-carton"; readonly tight: readonly TightCarton[] }
  | {
      readonly kind: "no-outer";
      readonly carton: DraftCarton;
      readonly least: Block;
      readonly gapUm: number;
      readonly tight: readonly TightCarton[];
    }
  | Exclude<DraftRefusal, { readonly cartonId: string }>;

/**
 * Drafts a recipe in the smallest carton, by its inside, that leaves the cushion asked for. With `outers` that carton
 * stands in the smallest one that leaves the habits' gap all round it.
 *
 * @param request - as for `draftedRecipe`, without the cartons
 * @param cartons - those to try, in any order; a single one is tried alone
 * @param outers - cartons to go round it, in any order; null for a single carton
 * @returns the draft; or that no carton will do; or what is wrong with the description or a supply
 * @throws RangeError as `draftedRecipe`
 * @example smallestDraft(mugOnPaper, [cube8, cube12], null).kind // "drafted"
 */
export function smallestDraft(
  request: Omit<DraftRequest, "carton" | "outer">,
  cartons: readonly DraftCarton[],
  outers: readonly DraftCarton[] | null = null,
): SmallestDraft {
  const tight: TightCarton[] = [];
  for (const carton of bySize(cartons)) {
    const outcome = draftedRecipe({ ...request, carton, outer: null });
    if (outcome.kind === "drafted") {
      if (outers !== null) return doubleDraft(request, carton, outers, tight);
      return { kind: "drafted", carton, outer: null, recipe: outcome, tight };
    }
    if (!("cartonId" in outcome)) return outcome;
    tight.push({ cartonId: outcome.cartonId, room: outcome.room });
  }
  return { kind: "no-carton", tight };
}

/** The inner carton is settled: the smallest that goes round it. */
function doubleDraft(
  request: Omit<DraftRequest, "carton" | "outer">,
  carton: DraftCarton,
  outers: readonly DraftCarton[],
  tight: readonly TightCarton[],
): SmallestDraft {
  const { habits, piece } = request;
  const asked = { gapUm: habits.boxGapUm, thisSideUp: piece.thisSideUp };
  for (const outer of bySize(outers)) {
    const recipe = draftedRecipe({ ...request, carton, outer });
    if (recipe.kind === "drafted") {
      return {
        kind: "drafted",
        carton,
        outer: { carton: outer, room: boxInBox(carton, outer.inside, asked) },
        recipe,
        tight,
      };
    }
    if (!("cartonId" in recipe)) return recipe;
  }
  return { kind: "no-outer", carton, least: leastOuter(carton, asked.gapUm), gapUm: asked.gapUm, tight };
}

function bySize(cartons: readonly DraftCarton[]): readonly DraftCarton[] {
  return cartons.toSorted((a, b) => blockVolume(a.inside) - blockVolume(b.inside));
}
