/** A flute by its letter: how tall the waves of the board are. */
export type Flute = "A" | "B" | "C" | "E";

/**
 * Thickness of single wall board by flute, as printed on a carton seller's guide: 5, 3, 4 and 1.5 mm. A second guide
 * gives 3/16, 1/8, 5/32 and 1/16 in.
 */
const CALIPER_UM: Readonly<Record<Flute, number>> = { A: 5_000, B: 3_000, C: 4_000, E: 1_500 };

/** The widest board has three flutes. */
const MOST_FLUTES = 3;

/** Thickness of board, and whether it is printed or added up from its flutes. */
export type BoardCaliper = { readonly um: number; readonly from: "printed" | "addedUp" };

/**
 * Reads the flutes of a board from their letters.
 *
 * @param text "C", "BC", "eb"
 * @returns one to three flutes from the outside in, or null if a letter is none
 * @example flutesOf("BC") // ["B", "C"]
 */
export function flutesOf(text: string): readonly Flute[] | null {
  const letters = [...text.trim().toUpperCase()];
  const flutes = letters.flatMap((letter) => (isFlute(letter) ? [letter] : []));
  if (flutes.length !== letters.length || flutes.length < 1 || flutes.length > MOST_FLUTES) return null;
  return flutes;
}

/**
 * How thick board is. That of double and triple wall is the sum of its flutes: 7 mm for BC, which is 0.28 in from memory.
 * Measure your own where it matters.
 *
 * @param flutes one to three
 * @returns micrometres
 * @throws RangeError if there is no flute, or more than three
 * @see tests/reference/carton-board.test.ts
 * @example boardCaliper(["B", "C"]) // { um: 7000, from: "addedUp" }
 */
export function boardCaliper(flutes: readonly Flute[]): BoardCaliper {
  if (flutes.length < 1 || flutes.length > MOST_FLUTES) {
    throw new RangeError(`boardCaliper requires one to three flutes, got ${flutes.length}`);
  }
  const um = flutes.reduce((sum, flute) => sum + CALIPER_UM[flute], 0);
  return { um, from: flutes.length === 1 ? "printed" : "addedUp" };
}

function isFlute(letter: string): letter is Flute {
  return letter in CALIPER_UM;
}
