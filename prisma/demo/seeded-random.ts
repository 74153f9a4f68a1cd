/** Gives the next number from 0 up to 1, 1 not included. */
export type Random = () => number;

const STEP = 0x6d2b79f5;
const TWO_TO_32 = 4_294_967_296;

/**
 * Random numbers that come out the same for the same seed, so that the demo shop is the same each time.
 * Good enough for invented data; nothing else should lean on it.
 *
 * @param seed - any whole number
 * @returns a source of numbers from 0 up to 1
 *
 * Source: the 32-bit mixer known as mulberry32 (from memory).
 * @example seededRandom(7)() === seededRandom(7)(); // true
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + STEP) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / TWO_TO_32;
  };
}
