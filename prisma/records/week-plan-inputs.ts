import type { WeekPlanInput } from "#lib/purchasing/week-plan/week-plan-input";
import type { ShopTerms, SupplyOutlookInput, WeeklyCheck } from "#lib/replenishment/weekly-check";
import { type Day, day } from "#lib/units/day";
import type { Database } from "../client";
import type { Shop } from "./shop";
import { type Substitute, substitutesOf } from "./substitutes";
import { suppliersOf } from "./suppliers";

/**
 * What the purchase plan needs beside the weekly check: what is planned for each supply, the suppliers' terms for an
 * order, and the shop's limits.
 *
 * @param db the database
 * @param shop the shop
 * @param week the weekly check of a day, and what it was made from
 * @returns the plan's input
 */
export async function weekPlanInput(
  db: Database,
  shop: Shop,
  week: {
    readonly today: Day;
    readonly inputs: readonly SupplyOutlookInput[];
    readonly terms: ShopTerms;
    readonly check: WeeklyCheck;
  },
): Promise<WeekPlanInput> {
  const [suppliers, substitutes, supplies] = await Promise.all([
    suppliersOf(db),
    substitutesOf(db),
    db.supply.findMany({
      where: { retired: false },
      select: { id: true, shelfLifeDays: true, lastUseOn: true },
    }),
  ]);
  const plans = new Map(supplies.map((supply) => [supply.id, supply]));
  const inputs = new Map(week.inputs.map((input) => [input.supplyId, input]));
  return {
    today: week.today,
    terms: week.terms,
    supplies: week.check.rows.flatMap((row) => {
      const input = inputs.get(row.supplyId);
      const plan = plans.get(row.supplyId);
      if (input === undefined || plan === undefined) return [];
      const lastUseOn = plan.lastUseOn === null ? null : day(plan.lastUseOn);
      return [{ row, input, shelfLifeDays: plan.shelfLifeDays, lastUseOn }];
    }),
    suppliers: suppliers.map((supplier) => ({
      supplierId: supplier.id,
      deliveryMinor: supplier.deliveryMinor,
      freeFromMinor: supplier.freeDeliveryMinor,
      leastOrderMinor: supplier.leastOrderMinor,
    })),
    substitutes: planSubstitutes(substitutes),
    limits: {
      longestCoverWeeks: shop.longestCoverWeeks,
      holdingPerMille: shop.holdingPerMille,
      orderCostMinor: shop.orderCostMinor,
      weekLimitMinor: shop.weekLimitMinor,
      roomMl: shop.roomMl,
    },
  };
}

/** One rule for each pair: where one stands in for another in several jobs, the one that takes most of it. */
function planSubstitutes(rules: readonly Substitute[]): WeekPlanInput["substitutes"] {
  const pairs = new Map<string, WeekPlanInput["substitutes"][number]>();
  for (const { supplyId, standInId, amount, insteadOf } of rules) {
    const key = `${standInId} ${supplyId}`;
    const ratio = Math.max(pairs.get(key)?.ratio ?? 0, amount / insteadOf);
    pairs.set(key, { fromSupplyId: standInId, toSupplyId: supplyId, ratio });
  }
  return [...pairs.values()];
}
