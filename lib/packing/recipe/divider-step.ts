import type { Block } from "#lib/packing/block";
import type { DraftSupply } from "#lib/packing/draft-supply";
import { naturalAmount } from "#lib/packing/natural-amount";
import { type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { dividers } from "#lib/packing/set/dividers";
import type { Grid } from "#lib/packing/set/grid-blocks";
import { amountHolding, unitArea } from "#lib/packing/unit-area";
import { formatEstimate } from "#lib/units/amount-text";

/**
 * The card that divides a set, as a step.
 *
 * @param cells - block around the whole set in micrometres
 * @param grid - rows, columns, tiers
 * @param supply - card by the sheet, the length of a roll, or its area
 * @returns a step taken once a parcel, null where nothing is to divide
 * @throws RangeError if the supply's use unit says no area
 * @example dividerStep(block, { rows: 2, columns: 3, tiers: 1 }, card)?.words // "Divide the set with 3 strips of card"
 */
export function dividerStep(cells: Block, grid: Grid, supply: DraftSupply): UnplacedStep | null {
  const { strips, pads, area } = dividers(cells, grid);
  if (area === 0) return null;
  const perUnit = unitArea(supply);
  if (perUnit === null)
    throw new RangeError(`dividerStep requires card with an area, got ${supply.supplyId}`);
  const least = amountHolding(area, perUnit);
  const theory = formatEstimate(least, supply.useUnit);
  const parts = [
    ...(strips > 0 ? [`${strips} ${strips === 1 ? "strip" : "strips"}`] : []),
    ...(pads > 0 ? [`${pads} ${pads === 1 ? "pad" : "pads"}`] : []),
  ].join(" and ");
  const reason = `${grid.rows} × ${grid.columns} cells in ${grid.tiers} ${grid.tiers === 1 ? "tier" : "tiers"}, ${parts}: ${theory}, rounded up.`;
  const amount = naturalAmount(least, supply.useUnit);
  const words = `Divide the set with ${parts} of card`;
  return unplacedStep({ job: "divide", words, supply, amount, per: "parcel", theory, reason });
}
