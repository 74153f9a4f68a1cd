import { exactNumber } from "#lib/postage/card-rows/exact-number";
import type { Rounding } from "#lib/postage/ratio-rounding";
import type { Measures } from "#lib/units/measures";
import { numberFromText } from "#lib/units/number-text";

const AS_IT_IS = "as it is";
const KINDS = { up: "up to", nearest: "nearest", down: "down to" } as const;

/**
 * A rounding as rows have it.
 *
 * @param rounding of a side or a weight
 * @param unit of what is rounded
 * @example roundingText({ kind: "up", to: ratio(1n) }, "in") // "up to 1 in"
 */
export function roundingText(rounding: Rounding, unit: string): string {
  return rounding.kind === "none" ? AS_IT_IS : `${KINDS[rounding.kind]} ${exactNumber(rounding.to)} ${unit}`;
}

/**
 * Reads a rounding.
 *
 * @param text "up to 1 in", "nearest 1 in", "down to 0.25 in" or "as it is"
 * @param unit that it must be in
 * @param measures whose decimal comma
 * @returns null if it can't be read, or is in another unit
 */
export function roundingFromText(text: string, unit: string, measures: Measures): Rounding | null {
  const words = text.trim().toLowerCase();
  if (words === AS_IT_IS) return { kind: "none" };
  const match = /^(up to|nearest|to the nearest|down to)\s+(.+?)\s*([a-z]+)$/.exec(words);
  const to = match?.[3] === unit ? numberFromText(match[2] ?? "", measures) : null;
  if (to === null || to.numerator <= 0n) return null;
  if (match?.[1] === KINDS.up) return { kind: "up", to };
  return { kind: match?.[1] === KINDS.down ? "down" : "nearest", to };
}
