/** Gives whole numbers from 0 to one less than `below`. */
export type Draw = (below: number) => number;

const FACTOR = 48_271;
const MODULUS = 2_147_483_647;
const SEED = 20_011;

/**
 * Numbers that look like chance and are the same each time, so that the same question gets the same tries.
 *
 * @returns draws numbers from 0 to one less than what is asked
 * @source generator with factor 48271 modulo 2^31 - 1: Park, Miller & Stockmeyer (1993), from memory
 */
export function steadyDraw(): Draw {
  let state = SEED;
  return (below) => {
    state = (state * FACTOR) % MODULUS;
    return Math.floor((state / MODULUS) * below);
  };
}

/**
 * A list in another order.
 *
 * @param list what is mixed; stays as it is
 * @param draw numbers
 * @returns the same things, each order as likely
 * @source Fisher & Yates (1938), from memory
 */
export function shuffled<T>(list: readonly T[], draw: Draw): T[] {
  const rest = [...list];
  return list.flatMap(() => rest.splice(draw(rest.length), 1));
}
