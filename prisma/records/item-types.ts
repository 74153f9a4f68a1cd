import { type Database, inTransaction } from "../client";
import type { ItemTypeModel } from "../generated/models/ItemType";
import { staleForecasts } from "./stale-forecasts";

/** A kind of piece that the shop sells. */
export type ItemType = ItemTypeModel;

/** An item type as saved: a description that is not given stays as it is. */
export type ItemTypeToSave = Omit<ItemType, "piece" | "valueMinor"> &
  Partial<Pick<ItemType, "piece" | "valueMinor">>;

/** Item types in use, in the shop's order; with those out of use where wanted. */
export async function itemTypesOf(
  db: Database,
  { retired = false }: { readonly retired?: boolean } = {},
): Promise<ItemType[]> {
  return db.itemType.findMany({
    where: retired ? {} : { retired: false },
    orderBy: [{ position: "asc" }, { name: "asc" }],
  });
}

/** Creates an item type or saves its changes. */
export async function saveItemType(db: Database, itemType: ItemTypeToSave): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.itemType.upsert({ where: { id: itemType.id }, create: itemType, update: itemType });
    await staleForecasts(tx);
  });
}
