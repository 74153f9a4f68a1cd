const STEPS = [1, 2, 4, 5, 10];

/**
 * The top of an axis: the next round number above the largest value, whose half is easy to read too.
 *
 * @param largest the largest value on the axis
 * @returns 1, 2, 4, 5 or 10 times a power of ten, at least the largest value
 * @example niceTop(37) // 40
 */
export function niceTop(largest: number): number {
  if (!(largest > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(largest));
  const step = STEPS.find((factor) => factor * power >= largest) ?? 10;
  return step * power;
}
