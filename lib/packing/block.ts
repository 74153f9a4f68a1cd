const CUBIC_MICROMETRES_PER_MILLILITRE = 1e12;

/** A block with square corners: what a carton must hold, or the inside of a carton. */
export type Block = { readonly lengthUm: number; readonly widthUm: number; readonly heightUm: number };

/**
 * The room that a block takes.
 *
 * @param block - sides in micrometres, zero or more
 * @returns millilitres, not rounded
 * @throws RangeError if a side is below zero or no number
 * @example blockVolume({ lengthUm: 100000, widthUm: 100000, heightUm: 100000 }) // 1000
 */
export function blockVolume(block: Block): number {
  const sides = [block.lengthUm, block.widthUm, block.heightUm];
  const wrong = sides.find((side) => !(side >= 0 && Number.isFinite(side)));
  if (wrong !== undefined) throw new RangeError(`blockVolume requires sides from zero, got ${wrong}`);
  return (block.lengthUm * block.widthUm * block.heightUm) / CUBIC_MICROMETRES_PER_MILLILITRE;
}

/**
 * A block with a layer all round: each side grows by twice the thickness.
 *
 * @param block - sides in micrometres
 * @param thickUm - thickness of what lies round it in micrometres, zero or more
 * @returns the block around
 * @throws RangeError if the thickness is below zero or no number
 * @example blockAround({ lengthUm: 100, widthUm: 80, heightUm: 60 }, 5) // 110 x 90 x 70
 */
export function blockAround(block: Block, thickUm: number): Block {
  if (!(thickUm >= 0 && Number.isFinite(thickUm))) {
    throw new RangeError(`blockAround requires a thickness from zero, got ${thickUm}`);
  }
  return {
    lengthUm: block.lengthUm + 2 * thickUm,
    widthUm: block.widthUm + 2 * thickUm,
    heightUm: block.heightUm + 2 * thickUm,
  };
}
