import { wholeLayers } from "#lib/packing/wrap/whole-layers";
import type { WrapNeed } from "#lib/packing/wrap/wrap-need";

/**
 * A strip wound round something round. The middle of layer k lies on a circle D + (2k - 1) t across, so that n layers
 * take n π D + n² π t, and the overlap. The ends fold in to the middle: width H + D, and the margin.
 *
 * @param piece - across (widest, with guards on) and height in micrometres, above zero
 * @param wrap - whole layers from 1; thickness of a layer, overlap and end margin in micrometres, from zero
 * @returns the strip, in whole micrometres
 * @throws RangeError if a number is not as said
 * @see computed from the geometry of a wound strip; overlap and margin are common practice, no source
 * @example roundWrap({ acrossUm: 114300, heightUm: 101600 }, { layers: 2, thickUm: 4762.5, overlapUm: 50800,
 *   endMarginUm: 25400 }) // 32.6 x 9.5 in
 */
export function roundWrap(
  piece: { readonly acrossUm: number; readonly heightUm: number },
  wrap: {
    readonly layers: number;
    readonly thickUm: number;
    readonly overlapUm: number;
    readonly endMarginUm: number;
  },
): WrapNeed {
  const layers = wholeLayers("roundWrap", wrap, [piece.acrossUm, piece.heightUm]);
  const turns = layers * Math.PI * (piece.acrossUm + layers * wrap.thickUm);
  const widthUm = piece.heightUm + piece.acrossUm;
  return {
    lengthUm: Math.round(turns + wrap.overlapUm),
    widthUm: Math.round(widthUm),
    wishedWidthUm: Math.round(widthUm + wrap.endMarginUm),
    overlapUm: wrap.overlapUm,
  };
}
