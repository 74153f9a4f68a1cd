import type { Random } from "#lib/statistics/normal-draw";

/**
 * A source of chance with a long period and 53 bits, the same for the same seed.
 *
 * @param seed whole number
 * @returns numbers from 0 up to 1, 1 left out
 * @see Blackman and Vigna (2018), Scrambled linear pseudorandom number generators: xoshiro128** (from memory)
 * @example evenRandom(5)() // the same each time
 */
export function evenRandom(seed: number): Random {
  const mix = (value: number): number => {
    const once = Math.imul(value ^ (value >>> 16), 0x21f0aaad);
    const twice = Math.imul(once ^ (once >>> 15), 0x735a2d97);
    return (twice ^ (twice >>> 15)) >>> 0;
  };
  let [a, b, c, d] = [1, 2, 3, 4].map((place) => mix(seed * 4 + place)) as [number, number, number, number];
  const rotated = (value: number, by: number): number => (value << by) | (value >>> (32 - by));
  const next = (): number => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result;
  };
  return () => ((next() >>> 5) * 2 ** 26 + (next() >>> 6)) / 2 ** 53;
}
