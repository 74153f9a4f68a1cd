import type { ParcelSummary } from "#prisma/records/parcel-lists";

/** What is in a parcel: "2 × Mug pair and Bud vase". */
export function contentsText(pieces: ParcelSummary["pieces"]): string {
  return pieces
    .map((piece) => (piece.pieces === 1 ? piece.name : `${piece.pieces} × ${piece.name}`))
    .join(" and ");
}

/** Its cartons from the inside out: "12 × 9 × 8 cut to 6 in inside Carton 16 × 12 × 10". */
export function cartonsText(cartons: ParcelSummary["cartons"]): string {
  const words = cartons.map((carton) => {
    const name = carton.supplyId === null ? `odd carton ${carton.sizesTyped ?? ""}`.trim() : carton.name;
    return carton.cutTyped === null ? name : `${name}, cut to ${carton.cutTyped}`;
  });
  return words.length === 0 ? "no carton" : words.toReversed().join(" inside ");
}

/** What became of a parcel, in words; empty where nothing has to be said. */
export function fateText(parcel: ParcelSummary): readonly string[] {
  return [
    ...(parcel.voidedAt === null ? [] : ["void"]),
    ...(parcel.brokenOn === null ? [] : ["broken"]),
    ...(parcel.returnedOn === null ? [] : ["came back"]),
    ...(parcel.unusual ? ["unusual"] : []),
    ...(parcel.revision > 1 ? ["corrected"] : []),
    ...(parcel.postedOn === null && parcel.voidedAt === null ? ["not marked posted"] : []),
  ];
}
