import type { Flute } from "#lib/cartons/board/board-caliper";
import type { CartonWall } from "#lib/cartons/strength/carton-rating";

/** Feet of medium in a foot of board, from memory. */
const TAKE_UP: Readonly<Record<Flute, number>> = { A: 1.54, B: 1.32, C: 1.43, E: 1.27 };

/** Board against single wall: double wall 1.7 to 1.9 times, from memory; triple wall is a guess, no source. */
const TIMES_SINGLE: Readonly<Record<CartonWall, number>> = { single: 1, double: 1.8, triple: 2.7 };

/** The papers of a board, each in pounds a thousand square feet. */
export type BoardPapers = {
  readonly liners: readonly number[];
  readonly mediums: readonly { readonly pounds: number; readonly flute: Flute }[];
};

/**
 * What board weighs: its liners, and its mediums times their take-up. Glue is left out.
 *
 * @param papers liners, one more than mediums, each above zero
 * @returns pounds a thousand square feet; a thousandth of it goes into `cartonMass`
 * @throws RangeError if a weight is not above zero, or there is not one liner more than mediums
 * @see a board maker's blank formula; the take-up is from memory
 * @example boardPounds({ liners: [42, 42], mediums: [{ pounds: 26, flute: "C" }] }) // 121.18
 */
export function boardPounds({ liners, mediums }: BoardPapers): number {
  if (mediums.length < 1 || liners.length !== mediums.length + 1) {
    throw new RangeError(
      `boardPounds requires one liner more than mediums, got ${liners.length} and ${mediums.length}`,
    );
  }
  const facings = facingPounds(liners);
  return mediums.reduce((sum, { pounds, flute }) => sum + checked(pounds) * TAKE_UP[flute], facings);
}

/**
 * The weight of all facings, which the certificate asks for.
 *
 * @param liners pounds a thousand square feet, each above zero
 * @throws RangeError if a weight is not above zero
 * @example facingPounds([42, 42]) // 84, that of 200 psi
 */
export function facingPounds(liners: readonly number[]): number {
  return liners.reduce((sum, pounds) => sum + checked(pounds), 0);
}

/**
 * How many times single wall board of a wall weighs, for cartons that were never weighed: a guess.
 *
 * @param wall of the board
 * @returns 1 for single wall
 * @example timesSingleWall("double") // 1.8
 */
export function timesSingleWall(wall: CartonWall): number {
  return TIMES_SINGLE[wall];
}

function checked(pounds: number): number {
  if (!(pounds > 0 && Number.isFinite(pounds))) {
    throw new RangeError(`boardPounds requires weights above zero, got ${pounds}`);
  }
  return pounds;
}
