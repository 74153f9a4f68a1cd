import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import type { Habits } from "#lib/packing/habits";
import { hollowVolume } from "#lib/packing/piece/body-volume";
import type { Piece } from "#lib/packing/piece/piece";
import type { ChosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { unitsOf } from "#lib/units/amount";

/**
 * What fills the hollows of a piece: the supply chosen for it, but paper for the carton where that is tissue and a
 * hollow would take too many sheets of it.
 *
 * @param piece - the piece
 * @param supplies - the supplies for hollows and for the carton
 * @param habits - share of a hollow that is filled, how, and the most sheets of tissue
 * @returns the supply, null where none was chosen
 * @see common practice, no source
 * @example hollowSupply(vase, chosenSupplies("mixed", shelf), USUAL_HABITS)?.material // "packing-paper"
 */
export function hollowSupply(
  piece: Pick<Piece, "hollows" | "body">,
  { hollow, fill }: Pick<ChosenSupplies, "hollow" | "fill">,
  habits: Habits,
): DraftSupply | null {
  if (hollow?.material !== "tissue" || fill?.form.kind !== "sheet") return hollow;
  const ml = piece.hollows.reduce((sum, each) => sum + hollowVolume(each, piece.body), 0);
  const tissue = fillAmount(ml * habits.hollowShare, hollow, habits, habits.hollowManner);
  return tissue.kind === "fill" && unitsOf(tissue.theory) <= habits.hollowTissue ? hollow : fill;
}
