/** Pieces of a parcel by item type. */
type ReadPieces = readonly { readonly itemTypeId: string; readonly pieces: number }[];

/**
 * Pieces of a parcel as a query strings them together.
 *
 * @param text "2 mug;1 bowl"
 * @returns by item type, in the order of the text
 */
export function piecesOfText(text: string): ReadPieces {
  return text.split(";").map((part) => {
    const gap = part.indexOf(" ");
    return { pieces: Number(part.slice(0, gap)), itemTypeId: part.slice(gap + 1) };
  });
}
