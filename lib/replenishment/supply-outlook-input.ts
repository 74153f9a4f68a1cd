import type { ClosedSpan } from "#lib/forecast/open-days";
import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import type { DayUse } from "#lib/forecast/weekly-use";
import type { Arrival } from "#lib/replenishment/run-out";
import type { ServiceGoal } from "#lib/replenishment/service-goal";
import type { CheckOffer } from "#lib/replenishment/suggested-packs";
import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";

/** What the records know of one supply. */
export type SupplyOutlookInput = {
  readonly supplyId: string;
  readonly name: string;
  readonly unit: UseUnit;
  /** null when never counted */
  readonly onHand: Amount | null;
  readonly countedOn: Day | null;
  readonly onOrder: readonly Arrival[];
  /** used a day (packed and spoilt, less returned; nothing unusual), above 0, oldest first */
  readonly useByDay: readonly DayUse[];
  /** first day of the shop's records */
  readonly firstDay: Day | null;
  /** null where the supply is not used */
  readonly forecast: SupplyForecast | null;
  readonly offers: readonly CheckOffer[];
  /** its own goal, or null for the shop's */
  readonly goal: ServiceGoal | null;
};

/** What the shop has decided. */
export type ShopTerms = {
  /** 1 Monday to 7 Sunday */
  readonly weekStartsOn: number;
  /** days from one check to the next, a whole number from 1 */
  readonly reviewDays: number;
  readonly goal: ServiceGoal;
  /** weeks of use that an order should bring above the reorder point */
  readonly coverWeeks: number;
  readonly closed: readonly ClosedSpan[];
  readonly currency: string;
  readonly minorDigits: number;
};
