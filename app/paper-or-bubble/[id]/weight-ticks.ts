import { MILLIGRAMS_PER_POUND } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

const MILLIGRAMS_PER_GRAM = 1_000;
const MOST_TICKS = 7;
const POUND_STEPS = [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
const GRAM_STEPS = [50, 100, 200, 250, 500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000, 100_000, 200_000];

/**
 * Round weights over a stretch: quarters, halves and whole pounds, or grams.
 *
 * @param fromMg milligrams
 * @param toMg milligrams, above the first
 * @param measures the shop's measures
 * @returns at most seven, milligrams, rising
 * @example weightTicks(0, 1_000_000, "metric") // 0, 200 g … 1 kg
 */
export function weightTicks(fromMg: number, toMg: number, measures: Measures): number[] {
  const [unit, steps] =
    measures === "imperial" ? [MILLIGRAMS_PER_POUND, POUND_STEPS] : [MILLIGRAMS_PER_GRAM, GRAM_STEPS];
  const least = (toMg - fromMg) / unit / (MOST_TICKS - 1);
  const step = (steps.find((each) => each >= least) ?? 10 ** Math.ceil(Math.log10(least))) * unit;
  const first = Math.ceil(fromMg / step);
  const last = Math.floor(toMg / step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => Math.round((first + at) * step));
}
