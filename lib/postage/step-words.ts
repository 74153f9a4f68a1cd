import { massIn } from "#lib/postage/exact-mass";
import { ratioText } from "#lib/postage/ratio";
import type { StepHit } from "#lib/postage/step-for";
import { measureWords } from "#lib/postage/typed-measure";

/**
 * A step in words, with its band where that has a name.
 *
 * @param step that a parcel pays
 * @returns "up to 15.999 oz", "Small parcel, up to 2 kg"
 */
export function stepWords({ band, stepAt, further, upToNg }: StepHit): string {
  const upTo = band.steps[stepAt]?.upTo;
  if (upTo === undefined) throw new RangeError(`stepWords requires a step of the band, got ${stepAt}`);
  const limit = further === 0 ? measureWords(upTo) : `${ratioText(massIn(upToNg, upTo.unit))} ${upTo.unit}`;
  return band.name === "" ? `up to ${limit}` : `${band.name}, up to ${limit}`;
}
