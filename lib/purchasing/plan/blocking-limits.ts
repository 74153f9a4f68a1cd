import { modelText } from "#lib/optimisation/model-text";
import type { Solve, SolveOptions } from "#lib/optimisation/solve";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import { goalColumn } from "#lib/purchasing/plan/model-columns";
import { planModel } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";

/** A limit that stands in the way, and the least by which it must give; both in the limit's own unit. */
export type BlockingLimit =
  | {
      readonly kind: "cash";
      readonly throughWeek: number;
      readonly limitMinor: number;
      readonly byMinor: number;
    }
  | { readonly kind: "room"; readonly limitLitres: number; readonly byLitres: number }
  | {
      readonly kind: "least-order";
      readonly supplierId: string;
      readonly limitMinor: number;
      readonly byMinor: number;
    }
  | {
      readonly kind: "most-stock";
      readonly supplyId: string;
      readonly limitUnits: number;
      readonly byUnits: number;
    };

const DUST = 1e-5;

/**
 * The limits that keep a plan from meeting every need that an order could meet: solves the question again with
 * limits that may give, for the least sum of what they give, each counted as a share of the limit. One of several
 * such sets is named; needs that no order could meet in time block nothing.
 *
 * @param question all of the plan
 * @param solve a solver
 * @param options its time and gap
 * @returns blocking limits; empty where the limits allow every need; null where the solver found no answer in time
 * @throws what the solver throws
 */
export async function blockingLimits(
  question: PlanQuestion,
  solve: Solve,
  options: SolveOptions,
): Promise<BlockingLimit[] | null> {
  const { model } = planModel(question, { kind: "relaxation" });
  const { values } = await solve(modelText(model), options);
  if (values === null) return null;
  const by = (name: string): number => {
    const value = values[name] ?? 0;
    return value > DUST ? value : 0;
  };
  const cash = cashLimits(question).map(({ throughWeek, minor }, index): BlockingLimit => {
    // A payment is whole: what the solver found is rounded up to the next minor unit.
    const byMinor = Math.ceil(by(goalColumn("cash", index)) - DUST);
    return { kind: "cash", throughWeek, limitMinor: minor, byMinor };
  });
  const room: BlockingLimit[] = [
    { kind: "room", limitLitres: question.limits.litres ?? 0, byLitres: by(goalColumn("room")) },
  ];
  const least = question.suppliers.map(({ id, leastOrderMinor }, index): BlockingLimit => {
    const byMinor = Math.ceil(by(goalColumn("least", index)) - DUST);
    return { kind: "least-order", supplierId: id, limitMinor: leastOrderMinor ?? 0, byMinor };
  });
  const most = question.supplies.map(({ id, most: limits }, index): BlockingLimit => {
    return {
      kind: "most-stock",
      supplyId: id,
      limitUnits: Math.min(...limits),
      byUnits: by(goalColumn("most", index)),
    };
  });
  return [...cash, ...room, ...least, ...most].filter((limit) => givenWay(limit) > 0);
}

function givenWay(limit: BlockingLimit): number {
  if (limit.kind === "room") return limit.byLitres;
  return limit.kind === "most-stock" ? limit.byUnits : limit.byMinor;
}
