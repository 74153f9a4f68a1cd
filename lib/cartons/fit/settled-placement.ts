import type { PlacedPiece, Placement } from "#lib/cartons/fit/placement";

/**
 * Lets every piece of a placement sink until it rests on the base or on another piece, so that nothing is shown in the air.
 *
 * @param placement - pieces that do not overlap, micrometres
 * @param baseUm - clearance at the base
 * @returns the placement with every piece as low as straight down allows; no piece is higher than before
 * @example settledPlacement([{ turned, alongUm: 0, acrossUm: 0, upUm: 9000 }], 0)[0]?.upUm // 0
 */
export function settledPlacement(placement: Placement, baseUm: number): Placement {
  const settled = new Map<PlacedPiece, PlacedPiece>();
  for (const piece of placement.toSorted((a, b) => a.upUm - b.upUm)) {
    const below = [...settled.values()].filter((other) => liesOver(piece, other));
    const upUm = Math.max(baseUm, ...below.map((other) => other.upUm + other.turned.heightUm));
    settled.set(piece, { ...piece, upUm });
  }
  return placement.flatMap((piece) => settled.get(piece) ?? []);
}

function liesOver(a: PlacedPiece, b: PlacedPiece): boolean {
  return (
    a.alongUm < b.alongUm + b.turned.lengthUm &&
    b.alongUm < a.alongUm + a.turned.lengthUm &&
    a.acrossUm < b.acrossUm + b.turned.widthUm &&
    b.acrossUm < a.acrossUm + a.turned.widthUm
  );
}
