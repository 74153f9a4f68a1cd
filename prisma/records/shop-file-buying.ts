import type { Measures } from "#lib/units/measures";
import { parseVolume } from "#lib/units/volume";
import type { ShopToSave } from "#prisma/records/shop";
import type { ShopFile } from "#prisma/records/shop-file-schema";
import type { SupplierToSave } from "#prisma/records/suppliers";

type SupplierOfFile = ShopFile["suppliers"][number];

/**
 * Writes the settings of a shop file as the shop's own record; terms of buying that the file leaves out stay as usual.
 *
 * @param file - the file, its texts already found readable
 * @returns the shop to save
 */
export function shopOfFile(file: ShopFile): ShopToSave {
  const { room, goal, longestCoverWeeks, holdingPerMille, orderCostMinor, weekLimitMinor, ...basics } =
    file.shop;
  const read = roomOf(room, basics.measures);
  return {
    ...basics,
    ...(goal === undefined ? {} : { goal }),
    ...(longestCoverWeeks === undefined ? {} : { longestCoverWeeks }),
    ...(holdingPerMille === undefined ? {} : { holdingPerMille }),
    ...(orderCostMinor === undefined ? {} : { orderCostMinor }),
    weekLimitMinor: weekLimitMinor ?? null,
    roomMl: read.ml,
    roomTyped: read.typed,
  };
}

/**
 * Writes a supplier of a shop file as the shop's own record.
 *
 * @param supplier - as the file has it
 * @returns the supplier to save
 */
export function supplierOfFile(supplier: SupplierOfFile): SupplierToSave {
  const { closed: _closed, peak, ...row } = supplier;
  return {
    id: row.id,
    name: row.name,
    leadTimeDays: row.leadTimeDays,
    deliveryMinor: row.deliveryMinor,
    freeDeliveryMinor: row.freeDeliveryMinor ?? null,
    leastOrderMinor: row.leastOrderMinor ?? null,
    workingDays: row.workingDays ?? false,
    orderDays: row.orderDays ?? "1234567",
    cutOff: row.cutOff ?? null,
    peakFrom: peak?.from ?? null,
    peakTo: peak?.to ?? null,
    peakExtraDays: peak?.extraDays ?? 0,
    note: null,
    retired: false,
  };
}

/** The days on which a supplier of a shop file is closed. */
export function closedOf(supplier: SupplierOfFile): { readonly fromDay: string; readonly toDay: string }[] {
  return (supplier.closed ?? []).map((span) => ({ fromDay: span.from, toDay: span.to }));
}

/**
 * A room of a shop file.
 *
 * @param text - as the file has it, already found readable; null or left out where it says none
 * @param measures - the shop's measures
 * @returns millilitres and the text; null where there is none
 */
export function roomOf(
  text: string | null | undefined,
  measures: Measures,
): { readonly ml: number | null; readonly typed: string | null } {
  const read = text == null ? null : parseVolume(text, measures);
  return read?.kind === "volume" ? { ml: read.ml, typed: read.typed } : { ml: null, typed: null };
}
