import { type Calibration, calibration } from "#lib/packing/calibration/calibration";

/** Bubbles of one name differ in height; beyond twice it is another size, or another unit. */
const SPAN = { least: 0.5, most: 2 };

/**
 * How thick one layer is, from a stack of layers measured with a ruler.
 *
 * @param stack - height in micrometres, above zero; whole layers from 1
 * @param replacesUm - the thickness in use so far, in micrometres
 * @returns micrometres of one layer, with what it replaces
 * @throws RangeError if a number is not as said
 * @see a physicist's stack of small bubble came to 4.32 mm a layer; the rest is computed
 * @example stackedLayer({ heightUm: 43200, layers: 10 }, 4762.5).value // 4320
 */
export function stackedLayer(
  stack: { readonly heightUm: number; readonly layers: number },
  replacesUm: number,
): Calibration {
  if (!(stack.heightUm > 0 && Number.isSafeInteger(stack.layers) && stack.layers >= 1)) {
    throw new RangeError(
      `stackedLayer requires a height above zero and whole layers, got ${stack.heightUm} and ${stack.layers}`,
    );
  }
  return calibration(stack.heightUm / stack.layers, replacesUm, SPAN);
}
