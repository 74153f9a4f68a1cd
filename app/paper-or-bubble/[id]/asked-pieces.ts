const MOST = 24;

/**
 * How many pieces the address asks about.
 *
 * @param typed the field of the address; left out: one
 * @returns the count, and what is wrong with what was typed
 */
export function askedPieces(typed: string | undefined): {
  readonly count: number;
  readonly problem: string | null;
} {
  if (typed === undefined) return { count: 1, problem: null };
  const count = Number(typed);
  if (/^\d+$/.test(typed) && count >= 1 && count <= MOST) return { count, problem: null };
  const problem = `“${typed}” in the address is no number of pieces from 1 to ${MOST}: one piece is shown.`;
  return { count: 1, problem };
}
