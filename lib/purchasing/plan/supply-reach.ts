import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";

/** What becomes of a supply when nothing is ordered, in use units for each week. */
export type SupplyReach = {
  /** right after the arrivals of the week */
  readonly after: readonly number[];
  /** the same when as much as possible has stood in for other supplies */
  readonly least: readonly number[];
  /** most that may have stood in for other supplies by the end of the week */
  readonly lent: readonly number[];
  /** at the end of the week */
  readonly end: readonly number[];
  /** most that may be there right after the arrivals: what is there already is never too much */
  readonly allowed: readonly number[];
  /** most that arrivals of this week could serve until the last week, wanted stock and standing in included */
  readonly needed: readonly number[];
};

/**
 * How far a supply reaches without any order.
 *
 * @param question all of the plan
 * @param supply one of its supplies
 * @returns by week: stock after arrivals and at the end, the most allowed, what could be needed
 */
export function supplyReach(question: PlanQuestion, supply: PlanSupply): SupplyReach {
  const after: number[] = [];
  const end: number[] = [];
  let stock = supply.stock;
  for (let week = 0; week < question.weeks; week++) {
    stock += supply.arrivals[week] ?? 0;
    after.push(stock);
    stock -= supply.use[week] ?? 0;
    end.push(stock);
  }
  const lent = lentByWeek(question, supply);
  const needed = new Array<number>(question.weeks).fill(0);
  let most = Number.NEGATIVE_INFINITY;
  for (let week = question.weeks - 1; week >= 0; week--) {
    most = Math.max(most, (supply.wanted[week] ?? 0) - (end[week] ?? 0) + (lent[week] ?? 0));
    needed[week] = most;
  }
  return {
    after,
    lent,
    end,
    least: after.map((units, week) => units - (lent[week - 1] ?? 0)),
    allowed: after.map((units, week) => Math.max(units, supply.most[week] ?? Number.POSITIVE_INFINITY)),
    needed,
  };
}

/** Most that may have stood in for other supplies by the end of each week, in units of this supply. */
function lentByWeek(question: PlanQuestion, supply: PlanSupply): number[] {
  const borrowers = question.substitutes.filter(({ fromSupplyId }) => fromSupplyId === supply.id);
  const lent: number[] = [];
  let sum = 0;
  for (let week = 0; week < question.weeks; week++) {
    for (const { toSupplyId, ratio } of borrowers) {
      const to = question.supplies.find(({ id }) => id === toSupplyId);
      if (to !== undefined) sum += ratio * mostStandIn(to, week);
    }
    lent.push(sum);
  }
  return lent;
}

/**
 * Most of a supply's need that another may stand in for in one week: that week's use, and in the first week
 * what was owed already.
 *
 * @param to the supply whose need it is
 * @param week number of the week, from 0
 * @returns use units of `to`
 */
export function mostStandIn(to: PlanSupply, week: number): number {
  return (to.use[week] ?? 0) + (week === 0 ? Math.max(0, -to.stock) : 0);
}
