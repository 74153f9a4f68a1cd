import type { Habits } from "#lib/packing/habits";
import type { Piece } from "#lib/packing/piece/piece";

/**
 * The cushion that a piece asks for between its wraps and the carton: as its frailty says, and that of a thin piece
 * where it is heavy and not sturdy.
 *
 * @param piece - frailty, and mass in milligrams, null if never weighed
 * @param habits - cushions by frailty, and from which mass on a piece is heavy
 * @returns micrometres
 * @see common practice, no source: 2 in, and 3 in for heavy or thin pieces
 * @example askedCushion({ frailty: "usual", massMg: 370000 }, USUAL_HABITS) // 50800
 */
export function askedCushion(
  piece: Pick<Piece, "frailty" | "massMg">,
  habits: Pick<Habits, "cushionUm" | "heavyFromMg">,
): number {
  const heavy = piece.massMg !== null && piece.massMg >= habits.heavyFromMg;
  const usual = habits.cushionUm[piece.frailty];
  return heavy && piece.frailty === "usual" ? Math.max(usual, habits.cushionUm.thin) : usual;
}
