import type { FitQuestion, WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { PlacedPiece, Placement } from "#lib/cartons/fit/placement";
import type { Block } from "#lib/packing/block";

/** What is wrong with a placement; pieces by their place in the question, from 0. */
export type PlacementFault =
  | { readonly kind: "wrong-count"; readonly asked: number; readonly placed: number }
  | { readonly kind: "not-whole"; readonly piece: number }
  | { readonly kind: "wrong-turn"; readonly piece: number }
  | { readonly kind: "outside"; readonly piece: number }
  | { readonly kind: "overlap"; readonly pieces: readonly [number, number] };

/**
 * Holds a placement against its question, by the plain meaning of the words: every piece once, in an allowed turn,
 * inside the clearance, and no two in the same room. Shares nothing with what finds placements.
 *
 * @param question - pieces, carton and clearance, micrometres
 * @param placement - one place for each piece, in the order of the question
 * @returns all faults, none where the placement holds
 * @example placementFaults(question, []) // [{ kind: "wrong-count", asked: 2, placed: 0 }]
 */
export function placementFaults(question: FitQuestion, placement: Placement): PlacementFault[] {
  const asked = question.pieces.length;
  if (placement.length !== asked) return [{ kind: "wrong-count", asked, placed: placement.length }];
  const single = placement.flatMap((placed, piece): PlacementFault[] => {
    const wanted = question.pieces[piece];
    if (wanted === undefined || !isWhole(placed)) return [{ kind: "not-whole", piece }];
    if (!isTurned(wanted, placed.turned)) return [{ kind: "wrong-turn", piece }];
    return isInside(question, placed) ? [] : [{ kind: "outside", piece }];
  });
  const pairs = placement.flatMap((placed, piece) =>
    placement.flatMap((other, at): PlacementFault[] =>
      at > piece && overlap(placed, other) ? [{ kind: "overlap", pieces: [piece, at] }] : [],
    ),
  );
  return [...single, ...pairs];
}

function isWhole({ turned, alongUm, acrossUm, upUm }: PlacedPiece): boolean {
  return [turned.lengthUm, turned.widthUm, turned.heightUm, alongUm, acrossUm, upUm].every(
    Number.isSafeInteger,
  );
}

function isTurned({ block, upright }: WrappedPiece, turned: Block): boolean {
  const plan = (of: Block): string => [of.lengthUm, of.widthUm].toSorted((a, b) => a - b).join();
  const all = (of: Block): string => [of.lengthUm, of.widthUm, of.heightUm].toSorted((a, b) => a - b).join();
  if (upright) return turned.heightUm === block.heightUm && plan(turned) === plan(block);
  return all(turned) === all(block);
}

function isInside({ inside, clearance }: FitQuestion, placed: PlacedPiece): boolean {
  const { wallsUm, baseUm, topUm } = clearance;
  return (
    placed.alongUm >= wallsUm &&
    placed.acrossUm >= wallsUm &&
    placed.upUm >= baseUm &&
    placed.alongUm + placed.turned.lengthUm <= inside.lengthUm - wallsUm &&
    placed.acrossUm + placed.turned.widthUm <= inside.widthUm - wallsUm &&
    placed.upUm + placed.turned.heightUm <= inside.heightUm - topUm
  );
}

function overlap(a: PlacedPiece, b: PlacedPiece): boolean {
  return (
    a.alongUm < b.alongUm + b.turned.lengthUm &&
    b.alongUm < a.alongUm + a.turned.lengthUm &&
    a.acrossUm < b.acrossUm + b.turned.widthUm &&
    b.acrossUm < a.acrossUm + a.turned.widthUm &&
    a.upUm < b.upUm + b.turned.heightUm &&
    b.upUm < a.upUm + a.turned.heightUm
  );
}
