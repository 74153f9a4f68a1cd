import type { Block } from "#lib/packing/block";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** The joint where the blank is glued or stitched to itself, with its trim. */
const JOINT_INCHES = 2;

/**
 * The area of a slotted carton's blank: (2 L + 2 W + 2 in) x (W + H).
 *
 * @param sizes - length, width and height in micrometres, above zero
 * @returns square micrometres
 * @throws RangeError if a size is not above zero
 * @see a board maker's blank formula
 * @example cartonBlank({ lengthUm: 304800, widthUm: 304800, heightUm: 304800 }) // 8.33 sq ft
 */
export function cartonBlank(sizes: Block): number {
  const { lengthUm, widthUm, heightUm } = sizes;
  const wrong = [lengthUm, widthUm, heightUm].find((each) => !(each > 0));
  if (wrong !== undefined) throw new RangeError(`cartonBlank requires sizes above zero, got ${wrong}`);
  return (2 * lengthUm + 2 * widthUm + JOINT_INCHES * MICROMETRES_PER_INCH) * (widthUm + heightUm);
}
