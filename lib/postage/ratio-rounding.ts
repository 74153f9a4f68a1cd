import { ratio, ratioProduct, ratioQuotient, ratioText } from "#lib/postage/ratio";
import type { Ratio } from "#lib/units/number-text";

/** How a side or a weight is rounded: to multiples of `to`, in the unit of what is rounded. */
export type Rounding =
  | { readonly kind: "none" }
  | { readonly kind: "up" | "nearest" | "down"; readonly to: Ratio };

/**
 * Rounds an exact fraction: up where anything is left over, however little; nearest with a half up; or down.
 *
 * @param value from zero
 * @param rounding multiples above zero
 * @returns the multiple, or the value itself where nothing is rounded
 * @throws RangeError if the multiples are not above zero or the value is below zero
 * @see "rounding off" and "rounding up" in a national post's manual: tests/reference/postage-dimensional.test.ts
 * @example rounded(ratio(122n, 10n), { kind: "up", to: ratio(1n) }) // 13/1
 */
export function rounded(value: Ratio, rounding: Rounding): Ratio {
  if (value.numerator < 0n) throw new RangeError(`rounded requires a value from 0, got ${value.numerator}`);
  if (rounding.kind === "none") return value;
  return ratioProduct(ratio(wholeOf(ratioQuotient(value, rounding.to), rounding.kind)), rounding.to);
}

/**
 * How many whole parts cover a value.
 *
 * @param value from zero
 * @param part above zero
 * @throws RangeError if the part is not above zero
 * @example coveringParts(ratio(11n, 5n), ratio(1n)) // 3
 */
export function coveringParts(value: Ratio, part: Ratio): number {
  return Number(wholeOf(ratioQuotient(value, part), "up"));
}

function wholeOf({ numerator, denominator }: Ratio, kind: "up" | "nearest" | "down"): bigint {
  const floor = numerator / denominator;
  const rest = numerator % denominator;
  const isRaised = kind === "up" ? rest > 0n : kind === "nearest" && rest * 2n >= denominator;
  return isRaised ? floor + 1n : floor;
}

/**
 * A rounding in words.
 *
 * @param rounding of a side or a weight
 * @param unit of what is rounded
 * @returns words that can follow "each side"
 * @example roundingWords({ kind: "up", to: ratio(1n) }, "in") // "up to a whole in"
 */
export function roundingWords(rounding: Rounding, unit: string): string {
  if (rounding.kind === "none") return "as it is";
  const { numerator, denominator } = rounding.to;
  const each = numerator === denominator ? `whole ${unit}` : `multiple of ${ratioText(rounding.to)} ${unit}`;
  return { up: `up to a ${each}`, nearest: `to the nearest ${each}`, down: `down to a ${each}` }[
    rounding.kind
  ];
}
