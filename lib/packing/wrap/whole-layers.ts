/**
 * The layers of a wrap, after a look at its numbers.
 *
 * @param caller - name of the function that asks, for the message
 * @param wrap - layers; thickness, overlap and end margin in micrometres
 * @param sizes - sizes of what is wrapped, in micrometres
 * @returns the layers
 * @throws RangeError unless layers are whole from 1, sizes above zero, and the other lengths from zero
 * @example wholeLayers("roundWrap", { layers: 2, thickUm: 0, overlapUm: 0, endMarginUm: 0 }, [1]) // 2
 */
export function wholeLayers(
  caller: string,
  wrap: {
    readonly layers: number;
    readonly thickUm: number;
    readonly overlapUm: number;
    readonly endMarginUm: number;
  },
  sizes: readonly number[],
): number {
  if (!Number.isSafeInteger(wrap.layers) || wrap.layers < 1) {
    throw new RangeError(`${caller} requires whole layers from 1, got ${wrap.layers}`);
  }
  const size = sizes.find((each) => !(each > 0 && Number.isFinite(each)));
  if (size !== undefined) throw new RangeError(`${caller} requires sizes above zero, got ${size}`);
  const lengths = [wrap.thickUm, wrap.overlapUm, wrap.endMarginUm];
  const wrong = lengths.find((each) => !(each >= 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`${caller} requires lengths from zero, got ${wrong}`);
  return wrap.layers;
}
