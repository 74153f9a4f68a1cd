import { fitBook } from "#lib/cartons/choice/fit-book";
import type { CartonFit } from "#lib/cartons/fit/carton-fit";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import type { Clearance, WrappedPiece } from "#lib/cartons/fit/fit-question";
import { type Block, blockVolume } from "#lib/packing/block";

/** Whether a carton holds pieces, as far as was found. */
export type Holding = CartonFit["kind"];

/**
 * Which of many cartons hold the same pieces. The middle ones by volume are looked at first, so that most of the others
 * are known from them: a placement that was found mostly holds in the larger ones, and what does not fit one does not fit
 * those that go into it.
 *
 * @param pieces wrapped, one or more
 * @param insides inside sizes of the cartons, micrometres
 * @param clearance what stays free, micrometres
 * @param effort how hard to look with more than six pieces
 * @returns an answer for each carton, in their order
 * @throws RangeError if there is no piece or a size is not as `cartonFit` asks
 * @example heldBy([mug], [cube6, cube8], clearance, QUICK_EFFORT) // ["does-not-fit", "fits"]
 */
export function heldBy(
  pieces: readonly WrappedPiece[],
  insides: readonly Block[],
  clearance: Clearance,
  effort: FitEffort,
): Holding[] {
  const fitIn = fitBook({ pieces, clearance, effort });
  const holds = new Map<Block, Holding>();
  const tooSmall: Block[] = [];
  for (const inside of middleFirst(bySize(insides))) {
    // Which reason there is does not matter here, so that every "does not fit" is carried.
    const isTooSmall = tooSmall.some((larger) => goesInto(inside, larger));
    const kind = isTooSmall ? "does-not-fit" : fitIn(inside).kind;
    if (kind === "does-not-fit") tooSmall.push(inside);
    holds.set(inside, kind);
  }
  return insides.map((inside) => holds.get(inside) ?? "not-proven");
}

function bySize(insides: readonly Block[]): Block[] {
  return insides.toSorted((a, b) => blockVolume(a) - blockVolume(b));
}

/** The middle of a list, then the middles of both halves, and so on. */
function middleFirst(list: readonly Block[]): Block[] {
  const order: Block[] = [];
  const parts = [list];
  for (let part = parts.shift(); part !== undefined; part = parts.shift()) {
    const middle = Math.floor(part.length / 2);
    order.push(...part.slice(middle, middle + 1));
    if (part.length > 1) parts.push(part.slice(0, middle), part.slice(middle + 1));
  }
  return order;
}

/** Whether all that fits the first fits the second, heights staying heights. */
function goesInto(small: Block, large: Block): boolean {
  const [low, high] = [Math.min(small.lengthUm, small.widthUm), Math.max(small.lengthUm, small.widthUm)];
  return (
    low <= Math.min(large.lengthUm, large.widthUm) &&
    high <= Math.max(large.lengthUm, large.widthUm) &&
    small.heightUm <= large.heightUm
  );
}
