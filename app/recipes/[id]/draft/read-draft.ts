import type { SupplyTerms } from "#lib/packing/card-sum";
import type { Piece } from "#lib/packing/piece/piece";
import type { SmallestDraft } from "#lib/packing/recipe/smallest-draft";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { habitsOf } from "#prisma/records/habits";
import { pieceOf } from "#prisma/records/item-type-piece";
import { type ItemType, itemTypesOf } from "#prisma/records/item-types";
import { type Supply, suppliesOf } from "#prisma/records/supplies";
import type { ShopNow } from "../../../_parts/shop-now";
import { supplyTerms } from "../../supply-terms";
import { type DraftChoiceReading, type DraftQuery, readDraftChoice } from "./draft-choice";
import { type DraftShelf, draftShelf } from "./draft-shelf";
import { styleDraft } from "./style-draft";

/** All that a draft is made of, as the shop stands now. */
export type DraftGround = {
  readonly itemType: ItemType;
  /** null: never described */
  readonly piece: Piece | null;
  readonly supplies: ReadonlyMap<string, Supply>;
  readonly shelf: DraftShelf;
  readonly terms: SupplyTerms;
  readonly reading: DraftChoiceReading;
  /** The draft of a style; null where the piece was never described or what was asked can't be read. */
  readonly draftOf: (style: CushionStyle) => SmallestDraft | null;
};

/**
 * Reads what a draft is made of.
 *
 * @param shopNow the open database and the shop
 * @param itemTypeId item type
 * @param query what was asked in the address
 * @returns null where there is no such item type in use
 */
export async function readDraft(
  { db, shop }: ShopNow,
  itemTypeId: string,
  query: DraftQuery,
): Promise<DraftGround | null> {
  const [itemTypes, supplies, habits] = await Promise.all([itemTypesOf(db), suppliesOf(db), habitsOf(db)]);
  const itemType = itemTypes.find(({ id }) => id === itemTypeId);
  if (itemType === undefined) return null;
  const { measures } = shop;
  const cartonIds = draftShelf(supplies).cartons.map(({ supplyId }) => supplyId);
  const reading = readDraftChoice(query, cartonIds, measures);
  const shelf = draftShelf(supplies, reading.kind === "choice" ? reading.choice.preferred : []);
  const piece = pieceOf(itemType);
  return {
    itemType,
    piece,
    supplies: new Map(supplies.map((supply) => [supply.id, supply])),
    shelf,
    terms: await supplyTerms(db, supplies),
    reading,
    draftOf: (style) =>
      piece === null || reading.kind === "refused"
        ? null
        : styleDraft(style, { piece, habits, shelf, choice: reading.choice, measures }),
  };
}
