import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import { type ModelSlot, slotsByOrder } from "#lib/purchasing/plan/model-columns";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";

/** One order that could be placed, and the slots that could be in it. */
export type SharedOrder = {
  readonly supplier: PlanSupplier;
  readonly week: number;
  readonly slots: readonly ModelSlot[];
  /** goods from which delivery is free; null where it never is, or costs nothing */
  readonly freeFrom: number | null;
  /** places of the cash limits that the order counts under */
  readonly cash: readonly number[];
};

/**
 * Every order that a plan could place.
 *
 * @param question all of the plan
 * @param slots all slots
 * @returns orders
 */
export function sharedOrders(question: PlanQuestion, slots: readonly ModelSlot[]): SharedOrder[] {
  const limits = cashLimits(question);
  return slotsByOrder(slots).flatMap((own) => {
    const [first] = own;
    if (first === undefined) return [];
    const { supplier, week } = first;
    const freeFrom = supplier.deliveryMinor > 0 ? supplier.freeFromMinor : null;
    const cash = limits.flatMap(({ throughWeek }, place) => (week <= throughWeek ? [place] : []));
    return [{ supplier, week, slots: own, freeFrom, cash }];
  });
}
