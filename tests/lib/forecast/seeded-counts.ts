/** Numbers that look like chance and are the same in every run. */
export type Seeded = {
  /** from 0 up to 1, left out */
  readonly uniform: () => number;
  /** a Poisson count */
  readonly count: (mean: number) => number;
};

/**
 * A generator from a seed: mulberry32 (public domain, from memory), and Poisson counts by multiplying uniforms until
 * they fall below e^-mean (Knuth, from memory).
 */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const count = (mean: number): number => {
    const least = Math.exp(-mean);
    let product = uniform();
    let found = 0;
    while (product > least) {
      product *= uniform();
      found += 1;
    }
    return found;
  };
  return { uniform, count };
}

/** A series of Poisson counts of one mean. */
export function countSeries(seed: number, { weeks, mean }: { weeks: number; mean: number }): number[] {
  const { count } = seeded(seed);
  return Array.from({ length: weeks }, () => count(mean));
}
