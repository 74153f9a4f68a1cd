import { blockVolume } from "#lib/packing/block";
import type { Hollow, PieceBody } from "#lib/packing/piece/piece";

/** A round bar against the square one around it. */
const ROUND = Math.PI / 4;

/**
 * The room that a body takes, from its outer sizes: cylinders π/4 D² H, blocks L W H, a stemmed piece as three
 * cylinders.
 *
 * @param body - the shape, sizes in micrometres from zero
 * @returns millilitres, not rounded
 * @throws RangeError if a size is below zero
 * @see elementary geometry
 * @example bodyVolume({ kind: "cylinder", acrossUm: 100000, heightUm: 100000 }) // 785.4
 */
export function bodyVolume(body: PieceBody): number {
  switch (body.kind) {
    case "cylinder":
      return roundVolume(body.acrossUm, body.heightUm);
    case "box":
      return blockVolume(body);
    case "flat":
      return flatVolume(body.acrossUm, body.longUm, body.thickUm);
    case "stemmed":
      return [body.bowl, body.stem, body.foot].reduce(
        (sum, { acrossUm, heightUm }) => sum + roundVolume(acrossUm, heightUm),
        0,
      );
    default:
      return body satisfies never;
  }
}

/**
 * The room inside a hollow.
 *
 * @param hollow - a volume in millilitres, inner sizes in micrometres, or a share of the body from 0 to 1
 * @param body - the body that it is in
 * @returns millilitres, not rounded
 * @throws RangeError if a size is below zero
 * @example hollowVolume({ kind: "share", share: 0.5 }, { kind: "box", lengthUm: 100000, widthUm: 100000,
 *   heightUm: 100000 }) // 500
 */
export function hollowVolume(hollow: Hollow, body: PieceBody): number {
  switch (hollow.kind) {
    case "volume":
      return hollow.ml;
    case "round":
      return roundVolume(hollow.acrossUm, hollow.deepUm);
    case "square":
      return blockVolume({ lengthUm: hollow.lengthUm, widthUm: hollow.widthUm, heightUm: hollow.deepUm });
    case "share":
      return hollow.share * bodyVolume(body);
    default:
      return hollow satisfies never;
  }
}

function roundVolume(acrossUm: number, heightUm: number): number {
  return ROUND * blockVolume({ lengthUm: acrossUm, widthUm: acrossUm, heightUm });
}

function flatVolume(acrossUm: number, longUm: number | null, thickUm: number): number {
  if (longUm === null) return roundVolume(acrossUm, thickUm);
  return blockVolume({ lengthUm: longUm, widthUm: acrossUm, heightUm: thickUm });
}
