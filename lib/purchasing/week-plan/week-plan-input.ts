import type { PlanSubstitute } from "#lib/purchasing/plan/plan-substitute";
import type { CheckRow } from "#lib/replenishment/check-row";
import type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import type { Day } from "#lib/units/day";

/** A supply as the plan needs it: what the weekly check was made from, what it said, and what is planned for it. */
export type PlanningSupply = {
  readonly input: SupplyOutlookInput;
  readonly row: CheckRow;
  /** days that it keeps on the shelf; null where that is no matter */
  readonly shelfLifeDays: number | null;
  /** last day on which it is used; null where none is planned */
  readonly lastUseOn: Day | null;
};

/** A supplier's terms for one order; minor units. */
export type PlanningSupplier = {
  readonly supplierId: string;
  readonly deliveryMinor: number;
  readonly freeFromMinor: number | null;
  readonly leastOrderMinor: number | null;
};

/** What the shop has decided about its buying; minor units. */
export type PlanningLimits = {
  /** nothing is bought that would last longer */
  readonly longestCoverWeeks: number;
  /** what a year of keeping stock costs, per thousand of its value */
  readonly holdingPerMille: number;
  /** the seller's own time for one order */
  readonly orderCostMinor: number;
  /** most to spend on the orders of one week; null for no limit */
  readonly weekLimitMinor: number | null;
  /** room for supplies, millilitres; null for no limit */
  readonly roomMl: number | null;
};

/** All that this week's purchase plan is made from. */
export type WeekPlanInput = {
  readonly today: Day;
  readonly terms: ShopTerms;
  readonly supplies: readonly PlanningSupply[];
  readonly suppliers: readonly PlanningSupplier[];
  /** the shop's own rules; those of supplies that are not planned count for nothing */
  readonly substitutes: readonly PlanSubstitute[];
  readonly limits: PlanningLimits;
};

/** A supply that the plan cannot order, and why. */
export type NotPlanned = {
  readonly supplyId: string;
  readonly why: "not-counted" | "no-use" | "no-offer" | "no-price";
};
