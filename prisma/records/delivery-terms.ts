import { closedCalendar } from "#lib/forecast/open-days";
import type { DeliveryTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { day } from "#lib/units/day";
import type { Supplier } from "./suppliers";

/** Days on which a supplier neither packs nor sends. */
export type SupplierClosure = { readonly fromDay: string; readonly toDay: string };

/**
 * What a supplier promises, as the reckoning takes it.
 *
 * @param supplier the row
 * @param closures its closed days
 * @returns its terms
 */
export function deliveryTermsOf(
  supplier: Pick<
    Supplier,
    "leadTimeDays" | "workingDays" | "orderDays" | "peakFrom" | "peakTo" | "peakExtraDays"
  >,
  closures: readonly SupplierClosure[],
): DeliveryTerms {
  const { peakFrom, peakTo } = supplier;
  return {
    promisedDays: supplier.leadTimeDays,
    inWorkingDays: supplier.workingDays,
    orderDays: [...supplier.orderDays].map(Number),
    closed: closedCalendar(closures.map((span) => ({ fromDay: day(span.fromDay), toDay: day(span.toDay) }))),
    peak:
      peakFrom === null || peakTo === null
        ? null
        : { from: peakFrom, to: peakTo, extraDays: supplier.peakExtraDays },
  };
}
