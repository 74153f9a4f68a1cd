import { median } from "simple-statistics";
import { type UnitSlip, unitSlip } from "#lib/packing/weight/unit-slip";
import { type WeighedParcel, weightGroupKey } from "#lib/packing/weight/weighed-parcel";

/** Parcels to learn from, and those whose reading is put aside, with the slip that would explain it. */
type SortedParcels = {
  readonly kept: readonly WeighedParcel[];
  readonly aside: readonly { readonly parcel: WeighedParcel; readonly slip: UnitSlip }[];
};

/** With so many like parcels, what they weigh against the bill tells what is usual. */
const ENOUGH = 4;

/**
 * Puts readings aside that were likely typed in the wrong unit. They are held against what like parcels weigh beside
 * their bills (the group, else the item type, else the shop, else the bill alone): where all weigh twice the bill it is
 * the bill that is wrong.
 *
 * @param parcels weighed parcels
 * @returns both parts, in the order given
 * @example mistypedParcels([...mugsOf650g, { ...mug, scaleMg: 10400000 }]).aside[0]?.slip.meant // "oz"
 */
export function mistypedParcels(parcels: readonly WeighedParcel[]): SortedParcels {
  const groups = usualRatios(parcels, weightGroupKey);
  const types = usualRatios(parcels, ({ itemTypeId }) => itemTypeId);
  const shop = usualRatios(parcels, () => "");
  const slips = parcels.map((parcel) => {
    const usual = groups.get(weightGroupKey(parcel)) ?? types.get(parcel.itemTypeId) ?? shop.get("") ?? 1;
    return { parcel, slip: unitSlip({ mg: parcel.scaleMg, unit: null }, parcel.predictedMg * usual) };
  });
  return {
    kept: slips.flatMap(({ parcel, slip }) => (slip === null ? [parcel] : [])),
    aside: slips.flatMap(({ parcel, slip }) => (slip === null ? [] : [{ parcel, slip }])),
  };
}

/** Median of scale over bill for each key with enough parcels. */
function usualRatios(
  parcels: readonly WeighedParcel[],
  keyOf: (parcel: WeighedParcel) => string,
): ReadonlyMap<string, number> {
  const ratios = new Map<string, WeighedParcel[]>();
  for (const parcel of parcels) {
    const list = ratios.get(keyOf(parcel)) ?? [];
    list.push(parcel);
    ratios.set(keyOf(parcel), list);
  }
  return new Map(
    [...ratios]
      .filter(([, list]) => list.length >= ENOUGH)
      .map(([key, list]) => [key, median(list.map(({ scaleMg, predictedMg }) => scaleMg / predictedMg))]),
  );
}
