import type { Block } from "#lib/packing/block";

/** Wrapped pieces in rows, columns and tiers, with what divides them. */
export type Grid = { readonly rows: number; readonly columns: number; readonly tiers: number };

/**
 * Every way to stand so many pieces in rows, columns and tiers that leaves no row or tier for nothing.
 *
 * @param pieces - whole pieces, from 1
 * @returns the grids, fewer tiers first; some have cells to spare
 * @throws RangeError if the pieces are not a whole number from 1
 * @example gridsOf(2) // 1 x 2 x 1, 2 x 1 x 1, 1 x 1 x 2
 */
export function gridsOf(pieces: number): readonly Grid[] {
  if (!Number.isSafeInteger(pieces) || pieces < 1) {
    throw new RangeError(`gridsOf requires whole pieces from 1, got ${pieces}`);
  }
  const upTo = (most: number): readonly number[] => Array.from({ length: most }, (_, index) => index + 1);
  const grids = upTo(pieces).flatMap((rows) =>
    upTo(Math.ceil(pieces / rows)).flatMap((columns) => {
      const tiers = Math.ceil(pieces / (rows * columns));
      const spare =
        Math.ceil(pieces / (columns * tiers)) < rows || Math.ceil(pieces / (rows * tiers)) < columns;
      return spare ? [] : [{ rows, columns, tiers }];
    }),
  );
  return grids.sort((a, b) => a.tiers - b.tiers);
}

/**
 * The block around a grid of equal pieces: columns along the length, rows along the width, tiers upwards.
 *
 * @param block - the block around one wrapped piece, in micrometres
 * @param grid - rows, columns, tiers
 * @param wallUm - thickness of a divider in micrometres, zero without
 * @returns the block
 * @example gridBlock(cup, { rows: 2, columns: 3, tiers: 1 }, 0).lengthUm // three cups
 */
export function gridBlock(block: Block, grid: Grid, wallUm: number): Block {
  return {
    lengthUm: grid.columns * block.lengthUm + (grid.columns - 1) * wallUm,
    widthUm: grid.rows * block.widthUm + (grid.rows - 1) * wallUm,
    heightUm: grid.tiers * block.heightUm + (grid.tiers - 1) * wallUm,
  };
}
