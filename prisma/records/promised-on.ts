import { promisedDay } from "#lib/replenishment/lead-time/delivery-terms";
import { addDays, type Day } from "#lib/units/day";
import { deliveryTermsOf, type SupplierClosure } from "./delivery-terms";
import type { Supplier } from "./suppliers";

/**
 * The day that a supplier promises for an order: by its lead time, the days on which it takes orders, its closed days and
 * its busy season. After its cut-off the order counts from the next day.
 *
 * @param supplier its terms
 * @param closures its closed days
 * @param placing the day, and the time "15:30" where it is noted
 * @returns the promised day
 */
export function promisedOn(
  supplier: Supplier,
  closures: readonly SupplierClosure[],
  placing: { readonly placedOn: Day; readonly placedAt: string | null },
): Day {
  const { placedOn, placedAt } = placing;
  const isAfterCutOff = supplier.cutOff !== null && placedAt !== null && placedAt > supplier.cutOff;
  return promisedDay(addDays(placedOn, isAfterCutOff ? 1 : 0), deliveryTermsOf(supplier, closures));
}
