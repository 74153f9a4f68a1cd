import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { isBetterMix } from "#lib/cushioning/purchase/is-better-mix";
import { mixFaults } from "#lib/cushioning/purchase/mix-faults";
import { mixModel } from "#lib/cushioning/purchase/mix-model";
import { type MixPlans, mixPlans } from "#lib/cushioning/purchase/mix-plan";
import { mixStart } from "#lib/cushioning/purchase/mix-start";
import { modelText } from "#lib/optimisation/model-text";
import { endSolver, solveInWorker } from "../../../solver/solve-in-worker";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { type MixKind, mixInstance } from "./mix-instances";

const QUESTIONS = 20;
const SIZE = { types: 20, supplies: 12, suppliers: 4 };
const SECONDS = 5;
const GAP = 0.001;
const TARGET_PERCENT = 1;
const TARGET_MILLISECONDS = 30;
const PER_CENT = 100;
const MILLISECONDS = 1_000;

const now = () => performance.now() / MILLISECONDS;

/**
 * How close the plans of paper, bubble or both come to the proven bound while a seller waits: invented questions with
 * enough of all, and with packs, cash and room that do not suffice. The time is that of all three plans, the gap that of
 * the mixed one, as a share of goods, delivery, postage and other costs.
 */
export async function mixSpeed(): Promise<Measurement[]> {
  const loose = await planned("loose");
  const tight = await planned("tight");
  await endSolver();
  const all = [...loose, ...tight];
  return [
    ...told("enough of all", loose),
    ...told("too little of some", tight),
    counted("mixed plans that break a rule", all.filter(({ isBroken }) => isBroken).length, "plans", 0),
    counted("mixed plans worse than all paper or all bubble", all.filter(isWorse).length, "plans", 0),
    counted(
      "own work of a plan beside the solver's, median",
      nearestRank(ownWork(), 0.5),
      "ms",
      TARGET_MILLISECONDS,
    ),
  ];
}

type Planned = { readonly plans: MixPlans; readonly seconds: number; readonly isBroken: boolean };

async function planned(kind: MixKind): Promise<Planned[]> {
  const all: Planned[] = [];
  for (let seed = 1; seed <= QUESTIONS; seed++) {
    const asked = mixInstance(seed, SIZE, kind);
    const begun = now();
    const plans = await mixPlans(asked, { solve: solveInWorker, seconds: SECONDS, gap: GAP, now });
    const seconds = now() - begun;
    const isBroken = mixFaults(checkedMix(asked).question, plans.mixed).length > 0;
    all.push({ plans, seconds, isBroken });
  }
  return all;
}

const isWorse = ({ plans }: Planned): boolean =>
  plans.byStyle.some(({ plan }) => isBetterMix(plan, plans.mixed));

function told(name: string, all: readonly Planned[]): Measurement[] {
  const gaps = all.map(({ plans }) => PER_CENT * (plans.mixed.proof.gap ?? Number.POSITIVE_INFINITY));
  const size = `${SIZE.types} types, ${SIZE.supplies} supplies, ${SIZE.suppliers} suppliers, ${name}`;
  const isUndone = ({ plans }: Planned) => plans.mixed.lack.parcels + plans.mixed.lack.share > 0;
  const isOpen = ({ plans }: Planned) => !plans.mixed.proof.leastUndone;
  return [
    counted(`${size}: gap in ${SECONDS} s, worst of ${all.length}`, Math.max(...gaps), "%", TARGET_PERCENT),
    counted(`${size}: gap, median`, nearestRank(gaps, 0.5), "%", null),
    counted(`${size}: seconds, worst`, Math.max(...all.map(({ seconds }) => seconds)), "s", null),
    counted(`${size}: plans that leave something undone`, all.filter(isUndone).length, "plans", null),
    counted(`${size}: of these, not proven the least`, all.filter(isOpen).length, "plans", null),
  ];
}

/** Milliseconds for a start, the model as text, and the check of an answer, for each question. */
function ownWork(): number[] {
  const questions = (["loose", "tight"] as const).flatMap((kind) =>
    Array.from({ length: QUESTIONS }, (_, index) => checkedMix(mixInstance(index + 1, SIZE, kind)).question),
  );
  return questions.map((question) => {
    const begun = now();
    const choice = greedyMix(question);
    const model = mixModel(question, { kind: "cost", mostParcels: 0, mostShare: 0 });
    const length = modelText(model.model).length + Object.keys(mixStart(model, choice)).length;
    const faults = mixFaults(question, costedMix(question, choice));
    if (length === 0 || faults.length > 0) throw new RangeError("ownWork requires a model and a sound start");
    return (now() - begun) * MILLISECONDS;
  });
}

const counted = (name: string, value: number, unit: string, target: number | null): Measurement =>
  measurement({ area: "cushioning", name: `paper or bubble, ${name}`, value, unit, target });
