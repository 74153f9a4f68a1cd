import { formatMoney } from "#lib/units/money";
import type { PaidCheck } from "./paid-check";

/**
 * What the check of payments found.
 *
 * @param check of the parcels
 * @param shop currency and its digits
 */
export function paidFinding(
  { over, overMinor, under, agrees, notTold }: PaidCheck,
  { currency, minorDigits }: { readonly currency: string; readonly minorDigits: number },
): string {
  const untold = [...notTold.values()].reduce((sum, count) => sum + count, 0);
  const told = over.length + under.length + agrees;
  if (told + untold === 0) return "No parcel of the last 90 days has its postage written down.";
  if (told === 0) return "What was paid can't be held against a card for any parcel of the last 90 days.";
  if (over.length === 0) {
    return under.length === 0
      ? `What was paid agrees with your cards: all ${told} parcels that can be told.`
      : `No parcel cost more than your cards say; ${under.length} of ${told} cost less.`;
  }
  const parcels = over.length === 1 ? "1 parcel" : `${over.length} parcels`;
  return `${parcels} of ${told} cost more than your cards say: ${formatMoney(overMinor, currency, minorDigits)} in all.`;
}
