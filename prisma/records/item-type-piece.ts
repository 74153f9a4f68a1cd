import { z } from "zod";
import type { Piece } from "#lib/packing/piece/piece";
import { type Database, inTransaction } from "../client";
import type { ItemType } from "./item-types";

/** Raised when descriptions are written in another way. */
const EDITION = 1;

const size = z.int();
const roundPart = z.strictObject({ acrossUm: size, heightUm: size });
const body = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("cylinder"), acrossUm: size, heightUm: size }),
  z.strictObject({ kind: z.literal("box"), lengthUm: size, widthUm: size, heightUm: size }),
  z.strictObject({ kind: z.literal("flat"), acrossUm: size, longUm: size.nullable(), thickUm: size }),
  z.strictObject({ kind: z.literal("stemmed"), bowl: roundPart, stem: roundPart, foot: roundPart }),
]);
const hollow = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("volume"), ml: z.number() }),
  z.strictObject({ kind: z.literal("round"), acrossUm: size, deepUm: size }),
  z.strictObject({ kind: z.literal("square"), lengthUm: size, widthUm: size, deepUm: size }),
  z.strictObject({ kind: z.literal("share"), share: z.number() }),
]);
const stickingOut = z.strictObject({
  part: z.enum(["handle", "spout", "knob", "foot", "other"]),
  where: z.enum(["left", "right", "front", "back", "top", "bottom"]),
  outUm: size,
  alongUm: size,
});
const pieceText = z.strictObject({
  edition: z.literal(EDITION),
  body,
  hollows: z.array(hollow),
  stickingOut: z.array(stickingOut),
  rims: z.union([z.literal(0), z.literal(1), z.literal(2)]),
  lid: roundPart.nullable(),
  thisSideUp: z.boolean(),
  frailty: z.enum(["sturdy", "usual", "thin"]),
  typed: z.record(z.string(), z.string()),
});

/** A piece without what its item type says itself: its id and its bare weight. */
export type PieceDescription = Omit<Piece, "itemTypeId" | "massMg">;

/**
 * The description of an item type's piece, with the bare weight of the item type.
 *
 * @param itemType an item type as stored
 * @returns the piece; null where it was never described
 * @throws Error if the kept text can't be read, which is a fault of the program
 */
export function pieceOf(itemType: Pick<ItemType, "id" | "name" | "massMg" | "piece">): Piece | null {
  if (itemType.piece === null) return null;
  const read = pieceText.safeParse(parsed(itemType.piece, itemType.name));
  if (!read.success) {
    throw new Error(`The description of ${itemType.name} can't be read: ${z.prettifyError(read.error)}`);
  }
  const { edition: _edition, ...piece } = read.data;
  return { ...piece, itemTypeId: itemType.id, massMg: itemType.massMg };
}

/**
 * Keeps how a piece of an item type looks. Its weight is the item type's own.
 *
 * @throws RangeError if there is no such item type
 */
export async function saveItemTypePiece(
  db: Database,
  itemTypeId: string,
  { body: form, hollows, stickingOut: parts, rims, lid, thisSideUp, frailty, typed }: PieceDescription,
): Promise<void> {
  const text: z.output<typeof pieceText> = {
    edition: EDITION,
    body: form,
    hollows: [...hollows],
    stickingOut: [...parts],
    rims,
    lid,
    thisSideUp,
    frailty,
    typed: { ...typed },
  };
  const { count } = await inTransaction(db, (tx) =>
    tx.itemType.updateMany({ where: { id: itemTypeId }, data: { piece: JSON.stringify(text) } }),
  );
  if (count === 0) throw new RangeError(`saveItemTypePiece requires a known item type, got ${itemTypeId}`);
}

function parsed(text: string, name: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Error(`The description of ${name} is no JSON`, { cause: error });
  }
}
