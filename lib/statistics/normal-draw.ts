/** Gives the next number from 0 up to 1, 1 left out. */
export type Random = () => number;

/**
 * A draw from the normal distribution with mean 0 and standard deviation 1.
 *
 * @param random source of chance; two numbers are taken
 * @returns the draw
 * @see Box and Muller (1958), A note on the generation of random normal deviates (from memory; moments in the tests)
 * @example normalDraw(random) // 0.37...
 */
export function normalDraw(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}
