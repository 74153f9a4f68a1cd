import type { Block } from "#lib/packing/block";
import type { PieceBody } from "#lib/packing/piece/piece";
import { flatWrap } from "#lib/packing/wrap/flat-wrap";
import { roundWrap } from "#lib/packing/wrap/round-wrap";
import type { WrapNeed } from "#lib/packing/wrap/wrap-need";

/**
 * The strip that wraps a piece: what is round by its widest part, what is flat or square round its two shorter sides.
 *
 * @param shape - the kind of its body
 * @param block - the block around it, with guards and earlier wraps on, in micrometres
 * @param wrap - whole layers from 1; thickness of a layer, overlap and end margin in micrometres
 * @returns the strip
 * @throws RangeError if a number is not as said
 * @example blockWrap("cylinder", { lengthUm: 114300, widthUm: 114300, heightUm: 101600 }, twoLayersOfBubble)
 */
export function blockWrap(
  shape: PieceBody["kind"],
  block: Block,
  wrap: Parameters<typeof roundWrap>[1],
): WrapNeed {
  switch (shape) {
    case "cylinder":
    case "stemmed":
      return roundWrap({ acrossUm: Math.max(block.lengthUm, block.widthUm), heightUm: block.heightUm }, wrap);
    case "box":
    case "flat": {
      const [thickUm = 0, acrossUm = 0, alongUm = 0] = [block.lengthUm, block.widthUm, block.heightUm].sort(
        (a, b) => a - b,
      );
      return flatWrap({ acrossUm, thickUm, alongUm }, wrap);
    }
    default:
      return shape satisfies never;
  }
}
