import { type Block, blockVolume } from "#lib/packing/block";

/** The void of a carton by place, in millilitres. */
export type FillSplit = { readonly baseMl: number; readonly sidesMl: number; readonly topMl: number };

/**
 * The void below, beside and above a load. The base gets its cushion as far as the height leaves room for it, the top
 * the rest of the height; what else is void lies beside.
 *
 * @param inside - inside of the carton in micrometres
 * @param load - `block` as it stands in the carton, and the millilitres that it takes
 * @param baseUm - cushion below, in micrometres, zero or more
 * @returns the three volumes, which add up to the void
 * @throws RangeError if the load does not fit or the base is below zero
 * @see computed from the geometry
 * @example fillSplit(cube12, { block: cube8, ml: blockVolume(cube8) }, 50800).baseMl // 4719.5, which is 288 cu in
 */
export function fillSplit(
  inside: Block,
  load: { readonly block: Block; readonly ml: number },
  baseUm: number,
): FillSplit {
  const spare = inside.heightUm - load.block.heightUm;
  if (!(spare >= 0 && inside.lengthUm >= load.block.lengthUm && inside.widthUm >= load.block.widthUm)) {
    throw new RangeError("fillSplit requires a load that fits");
  }
  if (!(baseUm >= 0)) throw new RangeError(`fillSplit requires a base from zero, got ${baseUm}`);
  const belowUm = Math.min(baseUm, spare);
  const baseMl = blockVolume({ ...inside, heightUm: belowUm });
  const topMl = blockVolume({ ...inside, heightUm: spare - belowUm });
  const sidesMl = blockVolume({ ...inside, heightUm: load.block.heightUm }) - load.ml;
  return { baseMl, sidesMl: Math.max(0, sidesMl), topMl };
}
