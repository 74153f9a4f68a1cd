import type { Measures } from "#lib/units/measures";

/** A number exactly as it was typed. */
export type Ratio = { readonly numerator: bigint; readonly denominator: bigint };

/** The fractions with a sign of their own, smallest denominator first. */
export const FRACTION_SIGNS: readonly (readonly [sign: string, numerator: number, denominator: number])[] = [
  ["½", 1, 2],
  ["⅓", 1, 3],
  ["⅔", 2, 3],
  ["¼", 1, 4],
  ["¾", 3, 4],
  ["⅕", 1, 5],
  ["⅖", 2, 5],
  ["⅗", 3, 5],
  ["⅘", 4, 5],
  ["⅙", 1, 6],
  ["⅚", 5, 6],
  ["⅛", 1, 8],
  ["⅜", 3, 8],
  ["⅝", 5, 8],
  ["⅞", 7, 8],
];

/** More digits than any bench number needs. */
const LONGEST_NUMBER = 24;

/**
 * Reads a number that is not negative: "1 1/3", "1⅓", "1-1/2", "0.5", ".5" and "2,5".
 * A comma before exactly three digits ("1,000") groups thousands for imperial measures; for metric measures it could
 * as well be a decimal comma, so it is not read at all.
 *
 * @param text - what a person typed
 * @param measures - the shop's measures
 * @returns the exact number, or null if it cannot be read
 * @example numberFromText("1,120⅛", "imperial") // { numerator: 8961n, denominator: 8n }
 * @example numberFromText("1 1/3", "imperial") // { numerator: 4n, denominator: 3n }
 */
export function numberFromText(text: string, measures: Measures): Ratio | null {
  const trimmed = text.trim();
  if (trimmed.length > LONGEST_NUMBER) return null;
  return fraction(trimmed) ?? signedFraction(trimmed, measures) ?? decimal(trimmed, measures);
}

function fraction(text: string): Ratio | null {
  const match = /^(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)$/.exec(text);
  if (match === null) return null;
  return mixed(match[1] ?? "0", BigInt(match[2] ?? "0"), BigInt(match[3] ?? "0"));
}

function signedFraction(text: string, measures: Measures): Ratio | null {
  const match = /^([\d,]*)\s*(\D)$/.exec(text);
  const found = FRACTION_SIGNS.find(([sign]) => sign === match?.[2]);
  const whole = withPoint(match?.[1] || "0", measures);
  if (found === undefined || whole === null || !/^\d+$/.test(whole)) return null;
  return mixed(whole, BigInt(found[1]), BigInt(found[2]));
}

function mixed(whole: string, numerator: bigint, denominator: bigint): Ratio | null {
  if (denominator === 0n) return null;
  return { numerator: BigInt(whole) * denominator + numerator, denominator };
}

function decimal(text: string, measures: Measures): Ratio | null {
  const plain = withPoint(text, measures);
  const match = plain === null ? null : /^(\d*)(?:\.(\d*))?$/.exec(plain);
  const digits = (match?.[1] ?? "") + (match?.[2] ?? "");
  if (digits === "") return null;
  return { numerator: BigInt(digits), denominator: 10n ** BigInt((match?.[2] ?? "").length) };
}

/** The number with a decimal point and no grouping, or null where the comma is ambiguous. */
function withPoint(text: string, measures: Measures): string | null {
  if (/^\d{1,3}(,\d{3})+\.\d*$/.test(text)) return text.replaceAll(",", "");
  if (/^\d{1,3}(\.\d{3})+,\d*$/.test(text)) return text.replaceAll(".", "").replace(",", ".");
  if (/^[1-9]\d{0,2}(,\d{3})+$/.test(text)) return measures === "imperial" ? text.replaceAll(",", "") : null;
  return /^\d*,\d+$/.test(text) ? text.replace(",", ".") : text;
}
