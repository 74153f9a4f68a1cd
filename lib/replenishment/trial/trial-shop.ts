import type { ClosedCalendar } from "#lib/forecast/open-days";
import type { ServiceGoal } from "#lib/replenishment/service-goal";
import type { ShopSupplier } from "#lib/replenishment/simulation/shop-setting";
import type { SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import type { Day } from "#lib/units/day";

/** What a trial changes of a shop. */
export type TrialTerms = {
  /** of supplies that have no goal of their own */
  readonly goal: ServiceGoal;
  /** weeks of use that an order should bring above the reorder point */
  readonly coverWeeks: number;
  /** days from one check to the next, a whole number from 1 */
  readonly reviewDays: number;
};

/** A shop as it stands, for a trial. Money in minor units. */
export type TrialShop = {
  readonly today: Day;
  readonly calendar: ClosedCalendar;
  /** as the weekly check sees them */
  readonly supplies: readonly SupplyOutlookInput[];
  /** each supplier of an offer once */
  readonly suppliers: readonly Omit<ShopSupplier, "leadTimes">[];
  /** what a year of keeping stock costs, as a share of its value */
  readonly holdingShare: number;
  /** what an order costs the seller beside its delivery */
  readonly orderCost: number;
};

/** Whose weeks are played: those to come, or the past as it was recorded. */
export type TrialSpan = {
  readonly kind: "coming" | "past";
  readonly firstDay: Day;
  readonly days: number;
};
