import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";

/** A supplier whose deliveries come on the promised day, always. */
export function onTime(promisedDays: number): SupplierDelivery {
  return {
    terms: plainTerms(promisedDays),
    belief: { chances: [{ daysLate: 0, chance: 1 }], promiseShare: 0, deliveries: 50 },
  };
}
