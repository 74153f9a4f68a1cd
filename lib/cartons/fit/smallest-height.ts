import { type CartonFit, cartonFit } from "#lib/cartons/fit/carton-fit";
import { type FitEffort, PIECES_SEARCHED_THROUGH } from "#lib/cartons/fit/fit-effort";
import type { FitQuestion, WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { NoFitReason } from "#lib/cartons/fit/no-fit-reason";
import type { PlacedPiece, Placement } from "#lib/cartons/fit/placement";
import { blockSides } from "#lib/cartons/fit/sides";

/** Pieces over a carton's base, whose height is to be cut. */
export type HeightQuestion = Omit<FitQuestion, "inside"> & {
  readonly base: { readonly lengthUm: number; readonly widthUm: number };
};

/** The least inside height, clearance at base and top included, and a placement in it. */
export type SmallestHeight =
  /** proven: not one micrometre less would do */
  | { readonly kind: "exact"; readonly heightUm: number; readonly placement: Placement }
  /** the best that was found; less may be possible */
  | { readonly kind: "best-found"; readonly heightUm: number; readonly placement: Placement }
  | { readonly kind: "at-no-height"; readonly reason: NoFitReason };

/**
 * The least inside height at which pieces fit over a carton's base, for cutting a carton down. Where pieces have sunk as
 * low as they can, the top of each is the clearance and a sum of heights of pieces below each other; so only such sums come
 * into question, and what fits one fits all above.
 *
 * @param question - pieces with their wrap on, base, clearance; whole micrometres
 * @param effort - how hard to look with more than six pieces
 * @returns the height; exact up to six pieces, to the millimetre of what the search finds with more
 * @throws RangeError as `cartonFit`
 * @example smallestHeight(twoCubesOf6On12By6, USUAL_EFFORT).heightUm // 6
 */
export function smallestHeight(question: HeightQuestion, effort: FitEffort): SmallestHeight {
  const { pieces, clearance } = question;
  const fitAt = (insideUm: number): CartonFit =>
    cartonFit({ pieces, clearance, inside: { ...question.base, heightUm: insideUm } }, effort);

  const tower = oneOnTheOther(question, effort);
  if (tower.kind === "does-not-fit") return { kind: "at-no-height", reason: tower.reason };
  let best = tower.placement;
  let open = heightsBelow(question, topOf(best) + clearance.topUm);
  let isProven = true;
  while (open.length > 0) {
    const middle = open.length >> 1;
    const heightUm = open[middle] ?? 0;
    const fit = fitAt(heightUm);
    if (fit.kind === "fits") {
      best = fit.placement;
      const found = topOf(best) + clearance.topUm;
      open = open.filter((height) => height < found);
    } else {
      // The last height asked below the best is the one that counts: what does not fit there fits nowhere below.
      isProven = fit.kind === "does-not-fit";
      open = open.slice(middle + 1);
    }
  }
  const heightUm = topOf(best) + clearance.topUm;
  const isExact =
    pieces.length <= PIECES_SEARCHED_THROUGH ? isProven : fitAt(heightUm - 1).kind === "does-not-fit";
  return { kind: isExact ? "exact" : "best-found", heightUm, placement: best };
}

/** Every piece lies alone on the base or never will; one on top of the other they then fit at some height. */
function oneOnTheOther(
  question: HeightQuestion,
  effort: FitEffort,
): Exclude<CartonFit, { kind: "not-proven" }> {
  const placement: PlacedPiece[] = [];
  let upUm = question.clearance.baseUm;
  for (const [piece, wrapped] of question.pieces.entries()) {
    const alone = lowestAlone(question, wrapped, effort);
    if (alone.kind === "not-proven") throw new Error(`smallestHeight got no answer for piece ${piece} alone`);
    if (alone.kind === "does-not-fit") {
      const { reason } = alone;
      return { ...alone, reason: reason.kind === "piece-too-large" ? { ...reason, piece } : reason };
    }
    for (const placed of alone.placement) {
      placement.push({ ...placed, upUm });
      upUm += placed.turned.heightUm;
    }
  }
  return { kind: "fits", placement };
}

function lowestAlone({ base, clearance }: HeightQuestion, piece: WrappedPiece, effort: FitEffort): CartonFit {
  const [low = 0, ...higher] = heightsOf(piece).toSorted((a, b) => a - b);
  const fitAt = (heightUm: number): CartonFit => {
    const inside = { ...base, heightUm: heightUm + clearance.baseUm + clearance.topUm };
    return cartonFit({ pieces: [piece], clearance, inside }, effort);
  };
  return higher.reduce((fit, heightUm) => (fit.kind === "fits" ? fit : fitAt(heightUm)), fitAt(low));
}

const MILLIMETRE = 1000;

function heightsBelow({ pieces, clearance }: HeightQuestion, highestUm: number): number[] {
  const freeUm = clearance.baseUm + clearance.topUm;
  if (pieces.length > PIECES_SEARCHED_THROUGH) {
    const steps = Math.floor((highestUm - 1 - freeUm) / MILLIMETRE);
    return Array.from({ length: Math.max(0, steps) }, (_, step) => freeUm + (step + 1) * MILLIMETRE);
  }
  const sums = new Set([freeUm]);
  for (const piece of pieces) {
    for (const height of [...sums]) for (const own of heightsOf(piece)) sums.add(height + own);
  }
  return [...sums].filter((height) => height > freeUm && height < highestUm).toSorted((a, b) => a - b);
}

const heightsOf = ({ block, upright }: WrappedPiece): readonly number[] =>
  upright ? [block.heightUm] : blockSides(block);

const topOf = (placement: Placement): number =>
  Math.max(...placement.map(({ upUm, turned }) => upUm + turned.heightUm));
