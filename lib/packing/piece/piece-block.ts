import type { Block } from "#lib/packing/block";
import type { Piece, PieceBody, PieceSide } from "#lib/packing/piece/piece";

/**
 * The smallest block around a body as it stands, without what sticks out.
 *
 * @param body - the shape, sizes in micrometres
 * @returns the block; a flat piece lies
 * @example bodyBlock({ kind: "flat", acrossUm: 266700, longUm: null, thickUm: 25400 }) // 266700 x 266700 x 25400
 */
export function bodyBlock(body: PieceBody): Block {
  switch (body.kind) {
    case "cylinder":
      return { lengthUm: body.acrossUm, widthUm: body.acrossUm, heightUm: body.heightUm };
    case "box":
      return { lengthUm: body.lengthUm, widthUm: body.widthUm, heightUm: body.heightUm };
    case "flat":
      return { lengthUm: body.longUm ?? body.acrossUm, widthUm: body.acrossUm, heightUm: body.thickUm };
    case "stemmed": {
      const across = Math.max(body.bowl.acrossUm, body.stem.acrossUm, body.foot.acrossUm);
      const heightUm = body.bowl.heightUm + body.stem.heightUm + body.foot.heightUm;
      return { lengthUm: across, widthUm: across, heightUm };
    }
    default:
      return body satisfies never;
  }
}

/**
 * The block around a piece with its guards on. What sticks out counts once a side, by the furthest; each guarded side
 * grows by the guard. A ring round a rim lies round the body and over the rim. The lid is apart.
 *
 * @param piece - the piece
 * @param guardUm - thickness of a guard in micrometres, zero without guards
 * @returns the block
 * @throws RangeError if the guard is below zero
 * @example guardedBlock(mugWithHandle, 4763).lengthUm // across + handle + guard
 */
export function guardedBlock(piece: Piece, guardUm: number): Block {
  if (!(guardUm >= 0 && Number.isFinite(guardUm))) {
    throw new RangeError(`guardedBlock requires a guard from zero, got ${guardUm}`);
  }
  const body = bodyBlock(piece.body);
  const ring = piece.rims > 0 ? guardUm : 0;
  const out = (side: PieceSide): number => {
    const parts = piece.stickingOut.filter(({ where }) => where === side).map(({ outUm }) => outUm);
    return parts.length === 0 ? 0 : Math.max(...parts) + guardUm;
  };
  return {
    lengthUm: body.lengthUm + Math.max(out("left"), ring) + Math.max(out("right"), ring),
    widthUm: body.widthUm + Math.max(out("front"), ring) + Math.max(out("back"), ring),
    heightUm:
      body.heightUm + Math.max(out("top"), ring) + Math.max(out("bottom"), piece.rims === 2 ? guardUm : 0),
  };
}
