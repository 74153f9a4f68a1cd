import type { Transaction } from "../client";
import type { ParcelBody } from "./parcel-body";

/** The item type that a parcel counts under: most pieces, the first by id among equals. */
export function leadingItemType(pieces: ParcelBody["pieces"]): string {
  const ordered = [...pieces].sort((a, b) => b.pieces - a.pieces || (a.itemTypeId < b.itemTypeId ? -1 : 1));
  return ordered[0]?.itemTypeId ?? "";
}

/**
 * Adds a parcel to the day roll-up, or takes it out again. The parcel counts once, under its leading
 * item type; its pieces count under each type.
 *
 * @param tx the open transaction
 * @param parcel what the roll-up is kept by
 * @param sign 1 to add, -1 to take out
 */
export async function addParcelToDay(
  tx: Transaction,
  parcel: Pick<ParcelBody, "packedOn" | "zoneId" | "unusual" | "pieces" | "cartons"> & {
    readonly style: string;
  },
  sign: 1 | -1,
): Promise<void> {
  const leading = leadingItemType(parcel.pieces);
  const cartonId = parcel.cartons[0]?.supplyId ?? "";
  for (const part of parcel.pieces) {
    const parcels = part.itemTypeId === leading ? sign : 0;
    await tx.$executeRaw`
      INSERT INTO "ParcelDay" ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual", "parcels", "pieces")
      VALUES (${parcel.packedOn}, ${part.itemTypeId}, ${parcel.style}, ${cartonId}, ${parcel.zoneId ?? ""},
        ${parcel.unusual}, ${parcels}, ${sign * part.pieces})
      ON CONFLICT ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual") DO UPDATE SET
        "parcels" = "ParcelDay"."parcels" + excluded."parcels",
        "pieces" = "ParcelDay"."pieces" + excluded."pieces"`;
  }
}
