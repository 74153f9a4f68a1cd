import type { WrappedPiece } from "#lib/cartons/fit/fit-question";
import { type Block, blockVolume } from "#lib/packing/block";
import type { Habits } from "#lib/packing/habits";
import { askedCushion } from "#lib/packing/piece/asked-cushion";
import type { Piece } from "#lib/packing/piece/piece";
import { pieceProblems } from "#lib/packing/piece/piece-problems";
import { type ChosenSupplies, chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { pieceSteps } from "#lib/packing/recipe/piece-steps";
import { unsuitedSupply } from "#lib/packing/recipe/unsuited-supply";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { unitsOf } from "#lib/units/amount";
import type { Measures } from "#lib/units/measures";
import { pieceOf } from "#prisma/records/item-type-piece";
import type { ItemType } from "#prisma/records/item-types";
import { pieceOfSizes } from "../pack/listing/piece-of-sizes";
import type { DraftShelf } from "../recipes/[id]/draft/draft-shelf";

/** One piece of an item type, wrapped as the shop wraps. */
export type WrappedType = {
  /** the piece, and its lid if it has one */
  readonly blocks: readonly WrappedPiece[];
  readonly ml: number;
  /** bare piece and wraps, milligrams; null where the piece was never weighed */
  readonly massMg: number | null;
  /** cushion asked for on every side, micrometres */
  readonly cushionUm: number;
  /** wrapped from its outer sizes alone, as it was never described */
  readonly isFromSizes: boolean;
};

/** What a shop wraps with and how. */
export type WrapGround = {
  readonly habits: Habits;
  readonly shelf: DraftShelf;
  readonly measures: Measures;
};

/**
 * The blocks of a wrapped piece: from its description, or from its outer sizes.
 *
 * @param itemType the item type
 * @param style cushion style
 * @param ground habits and supplies
 * @returns null where neither a description nor sizes are known, or they can't be right
 */
export function wrappedType(itemType: ItemType, style: CushionStyle, ground: WrapGround): WrappedType | null {
  const described = pieceOf(itemType);
  const piece = described ?? pieceBySizes(itemType);
  if (piece === null) return null;
  return { ...wrappedPiece(piece, style, ground), isFromSizes: described === null };
}

/**
 * The blocks of a wrapped piece.
 *
 * @param piece its description
 * @param style cushion style
 * @param ground habits and supplies
 */
export function wrappedPiece(
  piece: Piece,
  style: CushionStyle,
  { habits, shelf, measures }: WrapGround,
): Omit<WrappedType, "isFromSizes"> {
  const supplies = suitedSupplies(chosenSupplies(style, shelf.supplies), habits);
  const { steps, block, apart } = pieceSteps({ piece, habits, supplies, measures });
  const masses = new Map(shelf.supplies.map(({ supplyId, massMg }) => [supplyId, massMg ?? 0]));
  const wrapMg = steps.reduce(
    (sum, { supplyId, amount }) => sum + unitsOf(amount) * (masses.get(supplyId) ?? 0),
    0,
  );
  const blocks = apart === null ? [block] : [block, apart];
  return {
    blocks: blocks.map((each) => ({ block: whole(each), upright: piece.thisSideUp })),
    ml: blocks.reduce((sum, each) => sum + blockVolume(each), 0),
    massMg: piece.massMg === null ? null : piece.massMg + wrapMg,
    cushionUm: Math.round(askedCushion(piece, habits)),
  };
}

/** A supply that can't do its job is for the draft to speak of; here the piece is taken without that wrap. */
function suitedSupplies(chosen: ChosenSupplies, habits: Habits): ChosenSupplies {
  const unsuited = unsuitedSupply(chosen, habits);
  return unsuited === null ? chosen : suitedSupplies({ ...chosen, [unsuited.job]: null }, habits);
}

function pieceBySizes(itemType: ItemType): Piece | null {
  const { id, lengthUm, widthUm, heightUm, massMg } = itemType;
  if (lengthUm === null || widthUm === null || heightUm === null) return null;
  const piece = { ...pieceOfSizes("box", [lengthUm, widthUm, heightUm]), itemTypeId: id, massMg };
  return pieceProblems(piece).length === 0 ? piece : null;
}

function whole({ lengthUm, widthUm, heightUm }: Block): Block {
  return {
    lengthUm: Math.ceil(lengthUm),
    widthUm: Math.ceil(widthUm),
    heightUm: Math.ceil(heightUm),
  };
}
