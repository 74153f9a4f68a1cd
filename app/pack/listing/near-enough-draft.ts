import type { DraftCarton, DraftRequest } from "#lib/packing/recipe/draft-request";
import { type SmallestDraft, smallestDraft, type TightCarton } from "#lib/packing/recipe/smallest-draft";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** Sizes typed at listing time are no finer than this, so a cushion that is so much short may as well be whole. A guess. */
const HAIR_UM = MICROMETRES_PER_INCH / 8;

/** A draft; `askedUm` is the cushion that the habits ask for where the carton leaves less. */
export type NearEnoughDraft =
  | (Extract<SmallestDraft, { readonly kind: "drafted" }> & { readonly askedUm: number | null })
  | Exclude<SmallestDraft, { readonly kind: "drafted" }>;

/**
 * Drafts in the smallest carton that leaves the cushion asked for, or all but a hair of it. A carton that the seller
 * named is taken as long as the wrapped piece goes in.
 *
 * @param request as for a draft, without the cartons
 * @param cartons those to try
 * @param isNamed whether the seller named the carton
 */
export function nearEnoughDraft(
  request: Omit<DraftRequest, "carton" | "outer">,
  cartons: readonly DraftCarton[],
  isNamed: boolean,
): NearEnoughDraft {
  const draft = smallestDraft(request, cartons);
  const tight = "tight" in draft ? draft.tight : [];
  const near = tight.find((each) => isNearEnough(each, isNamed));
  const asWished = draft.kind === "drafted" ? { ...draft, askedUm: null } : draft;
  if (near === undefined) return asWished;
  const { leavesUm, askedUm } = near.room;
  const cushionUm = { sturdy: leavesUm, usual: leavesUm, thin: leavesUm };
  const accepted = smallestDraft(
    { ...request, habits: { ...request.habits, cushionUm } },
    cartons.filter(({ supplyId }) => supplyId === near.cartonId),
  );
  if (accepted.kind !== "drafted") return asWished;
  return { ...accepted, askedUm, tight: tight.slice(0, tight.indexOf(near)) };
}

function isNearEnough({ room }: TightCarton, isNamed: boolean): boolean {
  if (room.kind !== "too-tight") return false;
  return isNamed ? room.leavesUm > 0 : room.leavesUm >= room.askedUm - HAIR_UM;
}
