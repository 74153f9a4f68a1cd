import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { costValue } from "#lib/units/money";
import type { ParcelSummary } from "#prisma/records/parcel-lists";
import { costText } from "./cost-text";
import { contentsText } from "./parcel-text";

/**
 * The first line of a parcel's page.
 * @param parcel the parcel
 * @param shop its currency
 * @returns what it was, when, and what packing it cost
 */
export function parcelFinding(
  parcel: ParcelSummary,
  shop: { readonly currency: string; readonly minorDigits: number },
): string {
  const head = `${contentsText(parcel.pieces)}, packed ${formatDay(day(parcel.packedOn), { weekday: true })}`;
  if (parcel.voidedAt !== null) return `${head}: void.`;
  if (parcel.costValue === null) return `${head}; the cost of a supply in it is not known.`;
  return `${head}, cost ${costText(costValue(parcel.costValue), shop)} to pack.`;
}
