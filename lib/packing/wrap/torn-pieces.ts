import type { WrapNeed } from "#lib/packing/wrap/wrap-need";

/** How far a strip from a roll without perforation is cut up: the shop's smallest step on the ruler. */
const CUT_STEP_UM = 12_700;

/** What a wrap takes from a roll: widths side by side, torn pieces in each, and all of it end to end. */
type TornPieces = { readonly widths: number; readonly pieces: number | null; readonly usedUm: number };

/**
 * A strip from a roll. Where it is wider than the roll it takes several widths side by side, the last one halved where
 * torn pieces are wide enough for that. Where the roll tears every so far it takes whole pieces, else it is cut to the
 * next half inch.
 *
 * @param need - the strip in theory
 * @param roll - width and the length of a torn piece in micrometres, above zero; null where the roll is cut
 * @returns widths, torn pieces in all (null where cut) and micrometres of roll in all
 * @throws RangeError if a length is not above zero
 * @see common practice, no source: a roll is torn at its perforation
 * @example tornPieces(mugTwice, { widthUm: 304800, pieceUm: 304800 }) // { widths: 1, pieces: 3, usedUm: 914400 }
 */
export function tornPieces(
  need: WrapNeed,
  roll: { readonly widthUm: number; readonly pieceUm: number | null },
): TornPieces {
  const lengths = [need.lengthUm, need.widthUm, roll.widthUm, roll.pieceUm ?? CUT_STEP_UM];
  const wrong = lengths.find((each) => !(each > 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`tornPieces requires lengths above zero, got ${wrong}`);
  const halves = Math.ceil((2 * need.widthUm) / roll.widthUm);
  const widths = roll.pieceUm === null || halves < 2 ? Math.ceil(halves / 2) : halves / 2;
  const step = roll.pieceUm ?? CUT_STEP_UM;
  const steps = Math.ceil(widths * Math.ceil(need.lengthUm / step));
  return { widths, pieces: roll.pieceUm === null ? null : steps, usedUm: steps * step };
}
