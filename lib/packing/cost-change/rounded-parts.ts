/**
 * Rounds parts of either sign to whole numbers that add up to their rounded sum: each is rounded down, and what is left
 * goes, one each, to the largest remainders (the earlier part first where they are equal).
 *
 * @param parts - any finite numbers
 * @returns whole numbers in the same order; their sum is the sum of the parts, rounded to the nearest
 * @throws RangeError if a part is no finite number
 * @see largest remainder method (Hamilton), common practice
 * @example roundedParts([9.4, 7.4, 1.4]) // [10, 7, 1]
 */
export function roundedParts(parts: readonly number[]): number[] {
  const wrong = parts.find((part) => !Number.isFinite(part));
  if (wrong !== undefined) throw new RangeError(`roundedParts requires finite numbers, got ${wrong}`);
  const floors = parts.map(Math.floor);
  const whole = Math.round(parts.reduce((sum, part) => sum + part, 0));
  const left = whole - floors.reduce((sum, floor) => sum + floor, 0);
  const lucky = new Set(
    parts
      .map((part, index) => ({ index, rest: part - Math.floor(part) }))
      .toSorted((a, b) => b.rest - a.rest || a.index - b.index)
      .slice(0, left)
      .map(({ index }) => index),
  );
  return floors.map((floor, index) => floor + (lucky.has(index) ? 1 : 0));
}
