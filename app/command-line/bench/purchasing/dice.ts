/** Seeded chance: the same seed throws the same numbers. */
export type Dice = {
  /** a number from 0 up to 1 */
  readonly next: () => number;
  readonly whole: (from: number, to: number) => number;
  readonly between: (from: number, to: number) => number;
  readonly pick: <T>(values: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
};

/**
 * Dice of a seed: a linear congruential generator modulo 2^32 whose upper bits are used.
 *
 * @param seed whole number
 * @returns the dice
 * @source factor and step of Numerical Recipes, from memory
 */
export function dice(seed: number): Dice {
  let state = (seed * 2_654_435_761 + 12_345) >>> 0;
  const step = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >>> 9;
  };
  for (let turn = 0; turn < 8; turn++) step();
  const next = () => step() / 2 ** 23;
  return {
    next,
    whole: (from, to) => from + Math.floor(next() * (to - from + 1)),
    between: (from, to) => from + next() * (to - from),
    pick: (values) => {
      const value = values[Math.floor(next() * values.length)];
      if (value === undefined) throw new RangeError("dice require at least one value to pick from, got none");
      return value;
    },
    chance: (share) => next() < share,
  };
}
