import type { CountLineView } from "./count-line-view";

/**
 * The first line of the counting walk: how far it has come and what has never been counted.
 *
 * @param lines the lines of the walk
 * @returns a sentence
 * @example countFinding([]) // "No supply to count yet: copy the recipes of what you sell, theirs come along."
 */
export function countFinding(
  lines: readonly Pick<CountLineView, "isCountedToday" | "isNeverCounted">[],
): string {
  if (lines.length === 0)
    return "No supply to count yet: copy the recipes of what you sell, theirs come along.";
  const counted = lines.filter((line) => line.isCountedToday).length;
  const never = lines.filter((line) => line.isNeverCounted).length;
  if (counted === lines.length) return `All ${lines.length} supplies are counted today.`;
  if (never === lines.length && never > 1) return `${never} supplies to count for the first time.`;
  const done =
    counted === 0
      ? `${lines.length} supplies to count`
      : `${counted} of ${lines.length} supplies counted today`;
  return never === 0 ? `${done}.` : `${done}; ${never} ${never === 1 ? "has" : "have"} never been counted.`;
}
