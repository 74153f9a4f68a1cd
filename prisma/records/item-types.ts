import { type Database, inTransaction } from "../client";
import type { ItemTypeModel } from "../generated/models/ItemType";

/** A kind of piece that the shop sells. */
export type ItemType = ItemTypeModel;

/** Item types in use, in the shop's order. */
export async function itemTypesOf(db: Database): Promise<ItemType[]> {
  return db.itemType.findMany({ where: { retired: false }, orderBy: [{ position: "asc" }, { name: "asc" }] });
}

/** Creates an item type or saves its changes. */
export async function saveItemType(db: Database, itemType: ItemType): Promise<void> {
  await inTransaction(db, (tx) =>
    tx.itemType.upsert({ where: { id: itemType.id }, create: itemType, update: itemType }),
  );
}
