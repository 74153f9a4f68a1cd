import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import { certificateLimit } from "#lib/cartons/strength/certificate-limit";
import type { Block } from "#lib/packing/block";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** Without a unit: pounds and inches or newtons and metres give the same carton. Some print 5.876, a thousandth more. */
const SHORT_FORM = 5.87;
/** A carton lower than this part of its perimeter is not what the formula was fitted to (from memory). */
const SHALLOW_SHARE = 1 / 7;

/**
 * The load under which a slotted carton collapses in a press, new and dry: 5.87 × edge crush × sqrt(caliper × perimeter).
 *
 * @param board edge crush in force a length; caliper and perimeter in that length; all above zero
 * @returns force, in the unit of the edge crush; the height of the carton is not in it
 * @throws RangeError if a number is not above zero
 * @see McKee, Gander and Wachuta (1963), short form: tests/reference/carton-strength.test.ts
 * @example boxCompression({ edgeCrush: 32, caliper: 0.16, perimeter: 56 }) // 562.3
 */
export function boxCompression(board: {
  readonly edgeCrush: number;
  readonly caliper: number;
  readonly perimeter: number;
}): number {
  const { edgeCrush, caliper, perimeter } = board;
  const wrong = [edgeCrush, caliper, perimeter].find((each) => !(each > 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`boxCompression requires numbers above zero, got ${wrong}`);
  return SHORT_FORM * edgeCrush * Math.sqrt(caliper * perimeter);
}

/** What a carton bears in a press, and what that was worked out from. */
export type CartonCompression = {
  readonly pounds: number;
  readonly poundsPerInch: number;
  /** printed on the carton, or told from its burst strength by the certificate's row: a guess */
  readonly edgeCrushFrom: "printed" | "paired";
  /** too low for the formula: the answer is rough */
  readonly isShallow: boolean;
};

/**
 * The compression strength of a carton of the shelf.
 *
 * @param carton rating, inside sizes and thickness of the board in micrometres
 * @returns pounds, or null where no edge crush is known
 * @throws RangeError if a size or the rating is not above zero
 * @see McKee, Gander and Wachuta (1963), short form
 * @example cartonCompression({ rating, inside, boardUm: 4000 })?.pounds // 556.9 for 32 ECT and 16 × 12 in
 */
export function cartonCompression(carton: {
  readonly rating: CartonRating;
  readonly inside: Block;
  readonly boardUm: number;
}): CartonCompression | null {
  const edge = edgeCrushOf(carton.rating);
  if (edge === null) return null;
  const perimeterUm = 2 * (carton.inside.lengthUm + carton.inside.widthUm);
  const pounds = boxCompression({
    edgeCrush: edge.poundsPerInch,
    caliper: carton.boardUm / MICROMETRES_PER_INCH,
    perimeter: perimeterUm / MICROMETRES_PER_INCH,
  });
  return { pounds, ...edge, isShallow: carton.inside.heightUm < perimeterUm * SHALLOW_SHARE };
}

function edgeCrushOf(
  rating: CartonRating,
): Pick<CartonCompression, "poundsPerInch" | "edgeCrushFrom"> | null {
  if (rating.kind === "edgeCrush") return { poundsPerInch: rating.poundsPerInch, edgeCrushFrom: "printed" };
  const limit = certificateLimit(rating);
  if (limit.kind === "none") return null;
  return { poundsPerInch: limit.row.poundsPerInch, edgeCrushFrom: "paired" };
}
