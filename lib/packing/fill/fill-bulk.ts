import type { DraftSupply } from "#lib/packing/draft-supply";
import type { FillManner, Habits } from "#lib/packing/habits";

/**
 * How thick a supply lies when it is crumpled into a void: the volume that it fills by its flat area. The shop's own
 * measure comes first.
 *
 * @param supply - material and the shop's own measure in micrometres, null if none
 * @param habits - usual bulk by manner and material
 * @param manner - stuffed firm or laid loose
 * @returns micrometres, null where a material is no fill
 * @example fillBulk(packingPaper, USUAL_HABITS, "firm") // 1529, which is 52 cu in for a sheet of 24 x 36 in
 */
export function fillBulk(
  supply: Pick<DraftSupply, "material" | "bulkUm">,
  habits: Pick<Habits, "bulkUm">,
  manner: FillManner,
): number | null {
  return supply.bulkUm ?? habits.bulkUm[manner][supply.material] ?? null;
}
