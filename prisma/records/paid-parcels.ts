import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import type { ParcelSummary } from "./parcel-lists";

/** A parcel whose postage was paid, with what decides its price. */
export type PaidRow = {
  readonly id: string;
  readonly packedOn: string;
  readonly postedOn: string | null;
  readonly zoneId: string | null;
  readonly scaleMg: number | null;
  readonly scaleTyped: string | null;
  readonly postageMinor: number;
  readonly pieces: ParcelSummary["pieces"];
  /** the outermost carton: one of the shop's, or an odd one with its own sizes in micrometres */
  readonly carton: {
    readonly supplyId: string | null;
    readonly sizesUm: readonly [number, number, number] | null;
    readonly cutHeightUm: number | null;
  } | null;
};

/**
 * Parcels with their postage, packed in a span of days; voided ones are left out.
 *
 * @param db the database
 * @param span first and last day
 * @returns the latest first
 */
export async function paidParcelsOf(
  db: Database,
  span: { readonly from: Day; readonly to: Day },
): Promise<PaidRow[]> {
  const rows = await db.parcel.findMany({
    where: { packedOn: { gte: span.from, lte: span.to }, voidedAt: null, postageMinor: { not: null } },
    orderBy: [{ packedOn: "desc" }, { id: "desc" }],
    select: {
      id: true,
      packedOn: true,
      postedOn: true,
      zoneId: true,
      scaleMg: true,
      scaleTyped: true,
      postageMinor: true,
      pieces: {
        include: { itemType: { select: { name: true } } },
        orderBy: { itemTypeId: "asc" },
      },
      cartons: { where: { position: 0 } },
    },
  });
  return rows.flatMap(({ postageMinor, pieces, cartons, ...row }) => {
    if (postageMinor === null) return [];
    const [carton] = cartons;
    return [
      {
        ...row,
        postageMinor,
        pieces: pieces.map(({ itemTypeId, pieces: count, recipeId, itemType }) => ({
          itemTypeId,
          name: itemType.name,
          pieces: count,
          recipeId,
        })),
        carton:
          carton === undefined
            ? null
            : { supplyId: carton.supplyId, sizesUm: sizesOf(carton), cutHeightUm: carton.cutHeightUm },
      },
    ];
  });
}

function sizesOf(carton: {
  readonly lengthUm: number | null;
  readonly widthUm: number | null;
  readonly heightUm: number | null;
}): readonly [number, number, number] | null {
  const { lengthUm, widthUm, heightUm } = carton;
  return lengthUm === null || widthUm === null || heightUm === null ? null : [lengthUm, widthUm, heightUm];
}
