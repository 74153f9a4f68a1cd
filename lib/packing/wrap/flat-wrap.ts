import { wholeLayers } from "#lib/packing/wrap/whole-layers";
import type { WrapNeed } from "#lib/packing/wrap/wrap-need";

/**
 * A strip wound round something flat or square. Layer k goes round a rectangle that has grown by (2k - 1) t each way,
 * so that n layers take 2 n (W + T) + 4 n² t, and the overlap. The ends fold in to the middle: width along + T, and
 * the margin.
 *
 * @param piece - across and thick (what the strip goes round) and along (what it covers), in micrometres, above zero
 * @param wrap - whole layers from 1; thickness of a layer, overlap and end margin in micrometres, from zero
 * @returns the strip, in whole micrometres
 * @throws RangeError if a number is not as said
 * @see computed from the geometry of a wound strip; overlap and margin are common practice, no source
 * @example flatWrap({ acrossUm: 266700, thickUm: 25400, alongUm: 266700 }, { layers: 2, thickUm: 4762.5,
 *   overlapUm: 50800, endMarginUm: 25400 }) // 51 in
 */
export function flatWrap(
  piece: { readonly acrossUm: number; readonly thickUm: number; readonly alongUm: number },
  wrap: {
    readonly layers: number;
    readonly thickUm: number;
    readonly overlapUm: number;
    readonly endMarginUm: number;
  },
): WrapNeed {
  const layers = wholeLayers("flatWrap", wrap, [piece.acrossUm, piece.thickUm, piece.alongUm]);
  const turns = 2 * layers * (piece.acrossUm + piece.thickUm) + 4 * layers ** 2 * wrap.thickUm;
  const widthUm = piece.alongUm + piece.thickUm;
  return {
    lengthUm: Math.round(turns + wrap.overlapUm),
    widthUm: Math.round(widthUm),
    wishedWidthUm: Math.round(widthUm + wrap.endMarginUm),
    overlapUm: wrap.overlapUm,
  };
}
