import type { Comparison } from "#lib/cushioning/comparison";
import type { CushionStyle } from "#lib/packing/recipe-version";

/**
 * The way whose postage is not known while that of the other one is: it counts as nothing, so the two sums say nothing of
 * each other.
 *
 * @param comparison of two ways
 * @returns its style; null where both are known, or neither
 */
export function untoldPostage({ cheaper, dearer }: Comparison): CushionStyle | null {
  if ((cheaper.postageMinor === null) === (dearer.postageMinor === null)) return null;
  return cheaper.postageMinor === null ? cheaper.way.style : dearer.way.style;
}
