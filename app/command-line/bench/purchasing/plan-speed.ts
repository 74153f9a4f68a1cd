import { planFaults } from "#lib/purchasing/plan/plan-faults";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PurchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { purchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { endSolver, solveInWorker } from "../../../solver/solve-in-worker";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { planInstance } from "./plan-instances";

const QUESTIONS = 20;
const SIZE = { supplies: 40, suppliers: 5, weeks: 13 };
const SMALL = { supplies: 8, suppliers: 3, weeks: 8 };
const SECONDS = 5;

/**
 * How close plans come to the proven bound in the time that a seller waits: invented questions of the size of a
 * large shop and of a small one. The gap counts what is not proven, be it the plan or the bound that is off.
 */
export async function planSpeed(): Promise<Measurement[]> {
  const large = await planned(SIZE);
  const small = await planned(SMALL);
  await endSolver();
  return [
    ...told("40 supplies, 5 suppliers, 13 weeks", large, 1),
    ...told("8 supplies, 3 suppliers, 8 weeks", small, 1),
    counted("plans that break a rule", large.broken + small.broken, "plans", 0),
  ];
}

type Planned = { readonly plans: readonly PurchasePlan[]; readonly broken: number };

async function planned(size: typeof SIZE): Promise<Planned> {
  const plans: PurchasePlan[] = [];
  let broken = 0;
  for (let seed = 1; seed <= QUESTIONS; seed++) {
    const question: PlanQuestion = planInstance(seed, size);
    const now = () => performance.now() / 1000;
    const answer = await purchasePlan(question, { solve: solveInWorker, seconds: SECONDS, gap: 0.001, now });
    const plan = answer.kind === "plan" ? answer.plan : answer.nearest;
    if (plan === null) throw new RangeError(`question ${seed} has no plan`);
    if (planFaults(question, plan).length > 0) broken++;
    plans.push(plan);
  }
  return { plans, broken };
}

function told(name: string, { plans }: Planned, targetPercent: number): Measurement[] {
  const gaps = plans.map(({ proof }) => 100 * (proof.gap ?? Number.POSITIVE_INFINITY));
  const seconds = plans.map(({ proof }) => proof.seconds);
  const within = gaps.filter((gap) => gap <= targetPercent).length;
  return [
    counted(`${name}: gap in ${SECONDS} s, worst of ${plans.length}`, Math.max(...gaps), "%", targetPercent),
    counted(`${name}: gap, median`, nearestRank(gaps, 0.5), "%", null),
    counted(`${name}: plans within ${targetPercent} %`, within, "plans", null),
    counted(`${name}: seconds, worst`, Math.max(...seconds), "s", null),
  ];
}

const counted = (name: string, value: number, unit: string, target: number | null): Measurement =>
  measurement({ area: "purchasing", name, value, unit, target });
