/** Ticks of an axis at even distances. */
export type EvenTicks = { readonly from: number; readonly to: number; readonly ticks: readonly number[] };

const STEPS = [1, 2, 5, 10];

/**
 * Round ticks that hold a stretch of numbers between them.
 *
 * @param least smallest number on the axis
 * @param most largest, above the smallest
 * @param count about how many ticks are wanted, at least two
 * @returns ticks at steps of 1, 2 or 5 times a power of ten, the first not above `least`, the last not below `most`
 * @throws RangeError if the stretch is empty
 * @example evenTicks(12.3, 18.9, 4).ticks // [12, 14, 16, 18, 20]
 */
export function evenTicks(least: number, most: number, count: number): EvenTicks {
  if (!(most > least && count >= 2))
    throw new RangeError(`evenTicks requires a stretch, got ${least} to ${most}`);
  const raw = (most - least) / (count - 1);
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = (STEPS.find((times) => times * power >= raw * (1 - 1e-9)) ?? 10) * power;
  const first = Math.floor(least / step + 1e-9);
  const last = Math.ceil(most / step - 1e-9);
  const ticks = Array.from({ length: last - first + 1 }, (_, at) => (first + at) * step);
  return { from: first * step, to: last * step, ticks };
}
