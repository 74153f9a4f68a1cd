import { boardCaliper, type Flute, flutesOf } from "#lib/cartons/board/board-caliper";
import { timesSingleWall } from "#lib/cartons/board/board-weight";
import { packedOutside } from "#lib/cartons/board/charged-size";
import { type CartonRating, type CartonWall, readCartonRating } from "#lib/cartons/strength/carton-rating";
import type { Block } from "#lib/packing/block";
import { cartonMass } from "#lib/packing/carton-mass";
import type { Supply } from "#prisma/records/supplies";

/** What is taken where the flutes are not written down: the usual board of the wall. */
const USUAL_FLUTES: Readonly<Record<CartonWall, readonly Flute[]>> = {
  single: ["C"],
  double: ["B", "C"],
  triple: ["B", "C", "C"],
};

/** What cartons sold for posting are commonly rated: common practice, no source. */
const USUAL_RATING: Readonly<Record<CartonWall, CartonRating>> = {
  single: { kind: "edgeCrush", wall: "single", poundsPerInch: 32 },
  double: { kind: "edgeCrush", wall: "double", poundsPerInch: 48 },
  triple: { kind: "edgeCrush", wall: "triple", poundsPerInch: 67 },
};

/** How a seller says that a carton has no stamp. */
export const NO_STAMP = /^(?:none|no|unrated|no stamp|not rated)\.?$/i;

/** A carton of the shelf with its sizes: micrometres, milligrams. */
export type SizedCarton = {
  readonly supply: Supply;
  readonly inside: Block;
  /** measured by the seller, or by the board */
  readonly outside: Block;
  readonly isOutsideMeasured: boolean;
  readonly boardUm: number;
  readonly massMg: number;
  readonly isMassGuess: boolean;
  readonly rating: CartonRating;
  /** false: nobody wrote it down, so the usual one of such cartons is taken */
  readonly isRatingKnown: boolean;
};

/**
 * A carton with the sizes that follow from its board.
 *
 * @param supply a carton
 * @param bulgeUm how far each wall bows out when packed, where the outside was not measured
 * @param boardPoundsPerSquareFoot weight of single wall, for cartons that were never weighed
 * @returns null where its inside sizes are not known
 */
export function sizedCarton(
  supply: Supply,
  bulgeUm: number,
  boardPoundsPerSquareFoot: number,
): SizedCarton | null {
  const inside = blockOf(supply.lengthUm, supply.widthUm, supply.heightUm);
  if (inside === null) return null;
  const wall = wallOf(supply.wall);
  const measured = blockOf(supply.outsideLengthUm, supply.outsideWidthUm, supply.outsideHeightUm);
  const boardUm = boardUmOf(supply);
  const known = ratingOf(supply.rating, wall);
  return {
    supply,
    inside,
    outside: measured ?? packedOutside(inside, { boardUm, bulgeUm }),
    isOutsideMeasured: measured !== null,
    boardUm,
    massMg: supply.massMg ?? cartonMass(inside, boardPoundsPerSquareFoot * timesSingleWall(wall)),
    isMassGuess: supply.massMg === null,
    rating: known ?? USUAL_RATING[wall],
    isRatingKnown: known !== null,
  };
}

/**
 * How thick a carton's board is: by its flutes, or by the usual ones of its wall.
 *
 * @param supply what is written down of it
 * @returns micrometres
 */
export function boardUmOf({ wall, flutes }: Pick<Supply, "wall" | "flutes">): number {
  return boardCaliper(flutesOf(flutes ?? "") ?? USUAL_FLUTES[wallOf(wall)]).um;
}

/**
 * The rating that stands on a carton.
 *
 * @param text as the seller wrote it; "none" for a carton without a stamp
 * @param wall of its board
 * @returns null where nobody wrote it down, or what was written can't be read
 */
export function ratingOf(text: string | null, wall: CartonWall): CartonRating | null {
  if (text === null || text.trim() === "") return null;
  if (NO_STAMP.test(text.trim())) return { kind: "unrated" };
  const read = readCartonRating(text, wall);
  return read.kind === "rating" ? read.rating : null;
}

function blockOf(lengthUm: number | null, widthUm: number | null, heightUm: number | null): Block | null {
  if (lengthUm === null || widthUm === null || heightUm === null) return null;
  return { lengthUm, widthUm, heightUm };
}

function wallOf(wall: string | null): CartonWall {
  return wall === "double" || wall === "triple" ? wall : "single";
}
