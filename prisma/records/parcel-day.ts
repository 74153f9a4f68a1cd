import { leadingItemType } from "#lib/packing/leading-item-type";
import { type Day, day } from "#lib/units/day";
import type { Transaction } from "../client";
import { Prisma } from "../generated/client";
import type { ParcelBody } from "./parcel-body";
import { staleForecasts } from "./stale-forecasts";

/** What the day roll-up is kept by. */
export type DayParcel = Pick<ParcelBody, "packedOn" | "zoneId" | "unusual" | "pieces"> & {
  readonly style: string;
  readonly cartons: readonly { readonly supplyId: string | null }[];
};

type DayRow = {
  readonly parcel: DayParcel;
  readonly itemTypeId: string;
  readonly parcels: number;
  readonly pieces: number;
};

/**
 * Adds parcels to the day roll-up, or takes them out again. A parcel counts once, under its leading
 * item type; its pieces count under each type.
 *
 * @param tx the open transaction
 * @param parcels what to add or take out
 * @param sign 1 to add, -1 to take out
 */
export async function addParcelsToDays(
  tx: Transaction,
  parcels: readonly DayParcel[],
  sign: 1 | -1,
): Promise<void> {
  const values = dayRows(parcels).map(
    ({ parcel, itemTypeId, parcels: count, pieces }) =>
      Prisma.sql`(${parcel.packedOn}, ${itemTypeId}, ${parcel.style}, ${outerCarton(parcel)}, ${parcel.zoneId ?? ""},
        ${parcel.unusual}, ${sign * count}, ${sign * pieces})`,
  );
  if (values.length === 0) return;
  await tx.$executeRaw`
    INSERT INTO "ParcelDay" ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual", "parcels", "pieces")
    VALUES ${Prisma.join(values)}
    ON CONFLICT ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual") DO UPDATE SET
      "parcels" = "ParcelDay"."parcels" + excluded."parcels",
      "pieces" = "ParcelDay"."pieces" + excluded."pieces"`;
  const [earliest] = parcels.map((parcel): Day => day(parcel.packedOn)).sort();
  await staleForecasts(tx, earliest);
}

function dayRows(parcels: readonly DayParcel[]): DayRow[] {
  const sums = new Map<string, DayRow>();
  for (const parcel of parcels) {
    const leading = leadingItemType(parcel.pieces);
    const { packedOn, style, zoneId, unusual } = parcel;
    for (const { itemTypeId, pieces } of parcel.pieces) {
      const key = [packedOn, itemTypeId, style, outerCarton(parcel), zoneId ?? "", unusual].join("\n");
      const sum = sums.get(key);
      sums.set(key, {
        parcel,
        itemTypeId,
        parcels: (sum?.parcels ?? 0) + (itemTypeId === leading ? 1 : 0),
        pieces: (sum?.pieces ?? 0) + pieces,
      });
    }
  }
  return [...sums.values()];
}

function outerCarton(parcel: DayParcel): string {
  return parcel.cartons[0]?.supplyId ?? "";
}
