import type { ParcelDetail, ParcelMovement } from "#prisma/records/parcel-lists";

/**
 * The standing bill of a parcel: its use that no reversal took back.
 * @param parcel with its movements
 * @returns movements in the order of the work, cartons among them
 */
export function parcelBill(parcel: ParcelDetail): readonly ParcelMovement[] {
  return parcel.movements.filter(
    (movement) => movement.cause === "packed" && movement.reversesId === null && !movement.reversed,
  );
}
