import type { Block } from "#lib/packing/block";
import type { DraftRequest } from "#lib/packing/recipe/draft-request";
import { draftedRecipe } from "#lib/packing/recipe/drafted-recipe";
import type { TightCarton } from "#lib/packing/recipe/smallest-draft";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** Cartons are sold and measured no finer: quarter inches, half centimetres. */
const STEP_UM = { imperial: MICROMETRES_PER_INCH / 4, metric: 5_000 } as const;
/** Far larger than any carton: 4 m each way. */
const ROOMY: Block = { lengthUm: 4_000_000, widthUm: 4_000_000, heightUm: 4_000_000 };

/**
 * The inside of a carton that would leave the cushion asked for all round the wrapped piece.
 *
 * @param request as for a draft, without the cartons
 * @param tight cartons that were tried, the smallest first
 * @returns sides in micrometres, rounded up to what a carton is measured in; null where nothing can be drafted at all
 */
export function neededInside(
  request: Omit<DraftRequest, "carton" | "outer">,
  tight: readonly TightCarton[],
): Block | null {
  const room = tight.at(-1)?.room ?? roomInRoomy(request);
  if (room === null) return null;
  const { turned, askedUm } = room;
  const step = STEP_UM[request.measures];
  const side = (um: number): number => Math.ceil((um + 2 * askedUm) / step) * step;
  return { lengthUm: side(turned.lengthUm), widthUm: side(turned.widthUm), heightUm: side(turned.heightUm) };
}

function roomInRoomy(request: Omit<DraftRequest, "carton" | "outer">) {
  const carton = { supplyId: "", inside: ROOMY, boardUm: 0, massMg: null };
  const draft = draftedRecipe({ ...request, carton, outer: null });
  return draft.kind === "drafted" ? draft.room : null;
}
