import type { DeliveryTerms } from "#lib/replenishment/lead-time/delivery-terms";
import type { LatenessBelief } from "#lib/replenishment/lead-time/lateness-belief";

/** A supplier's promise, and how late its deliveries may be. */
export type SupplierDelivery = { readonly terms: DeliveryTerms; readonly belief: LatenessBelief };
