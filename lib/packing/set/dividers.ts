import type { Block } from "#lib/packing/block";
import type { Grid } from "#lib/packing/set/grid-blocks";

/** Card that divides a set: slotted strips, pads between tiers, and their area in square micrometres. */
type Dividers = { readonly strips: number; readonly pads: number; readonly area: number };

/**
 * The card cells of a set: for each tier a strip between two rows and between two columns, slotted into one another,
 * each as long as the set; a pad between two tiers.
 *
 * @param cells - the block around the whole set in micrometres
 * @param grid - rows, columns, tiers
 * @returns strips, pads and area
 * @see common practice, no source; the area is computed
 * @example dividers(block, { rows: 2, columns: 3, tiers: 1 }).strips // 3
 */
export function dividers(cells: Block, grid: Grid): Dividers {
  const highUm = cells.heightUm / grid.tiers;
  const alongLength = (grid.rows - 1) * grid.tiers;
  const alongWidth = (grid.columns - 1) * grid.tiers;
  const pads = grid.tiers - 1;
  const area =
    alongLength * cells.lengthUm * highUm +
    alongWidth * cells.widthUm * highUm +
    pads * cells.lengthUm * cells.widthUm;
  return { strips: alongLength + alongWidth, pads, area };
}
