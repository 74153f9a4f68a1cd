import { type CostedMix, costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { isBetterMix } from "#lib/cushioning/purchase/is-better-mix";
import type { MixChoice } from "#lib/cushioning/purchase/mix-choice";
import { type MixFault, mixFaults } from "#lib/cushioning/purchase/mix-faults";
import { type MixGoal, type MixModel, mixModel } from "#lib/cushioning/purchase/mix-model";
import { type MixProof, mixProof } from "#lib/cushioning/purchase/mix-proof";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { choiceOfMixValues, mixStart } from "#lib/cushioning/purchase/mix-start";
import { undoneWeights } from "#lib/cushioning/purchase/undone-weights";
import { modelText } from "#lib/optimisation/model-text";
import type { SolverAnswer } from "#lib/optimisation/solve";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";

/** Why a plan is not the solver's. */
export type MixWhy =
  /** no time was given, or none was left */
  | { readonly kind: "no-time" }
  /** the solver found none in its time that is as good */
  | { readonly kind: "stopped" }
  /** the solver failed; its own words */
  | { readonly kind: "failed"; readonly message: string }
  /** the solver said that there is none, or gave one that breaks a rule */
  | { readonly kind: "unsound"; readonly faults: readonly MixFault[] };

/** A plan, how good it is, and where it comes from. */
export type MixPlan = CostedMix & {
  readonly proof: MixProof;
  /** the solver, also where it found the plan for a narrower question; or the greedy start */
  readonly from: "solver" | "heuristic";
  /** why the solver's answer to this very question is not what is shown; null where it is, or where it is as good */
  readonly why: MixWhy | null;
};

/** A plan that is known already, to begin with: taken where it breaks no rule of the question. */
export type MixStart = Pick<MixPlan, "from"> & { readonly choice: MixChoice };

/**
 * The best plan for a question as it stands: first as few parcels unpacked as the limits allow, then as little below
 * what is to be kept, then the least total. A greedy plan and the plans that are known are compared first; where they
 * leave something undone, the solver first looks for plans that leave little, then for the least; then it goes for the
 * total. Whatever it gives is
 * rounded, costed and checked by code of its own, and taken only where it is sound and no worse.
 *
 * @param question all of the mix, checked
 * @param means solver, time, gap, clock
 * @param starts plans that are known; the answer is never worse than a sound one of them
 * @returns the plan
 */
export async function solvedMix(
  question: MixQuestion,
  means: PlanMeans,
  starts: readonly MixStart[],
): Promise<MixPlan> {
  const begun = means.now();
  const left = () => means.seconds - (means.now() - begun);
  let found = firstOf(question, starts);
  let leastUndone = true;
  const isUndone = (kind: "parcels" | "share") => found.mix.lack[kind] > 0;
  if (isUndone("parcels") || isUndone("share")) {
    const goal: MixGoal = { kind: "weighed", weights: undoneWeights(question) };
    found = (await bettered(question, goal, means, left() * SHARE_OF_TIME.weighed, found)).found;
  }
  for (const kind of ["parcels", "share"] as const) {
    if (!isUndone(kind)) continue;
    const next = await bettered(question, goalOf(kind, found), means, left() * SHARE_OF_TIME[kind], found);
    found = next.found;
    leastUndone &&= found.mix.lack[kind] - next.bound <= LACK_SLACK;
  }
  const { found: last, bound } = await bettered(question, goalOf("cost", found), means, left(), found);
  const proof = mixProof(last.mix.costs, {
    bound,
    leastUndone,
    gapAsked: means.gap,
    seconds: means.now() - begun,
  });
  return { ...last.mix, proof, from: last.from, why: last.why };
}

/** Parts of the time that is left, for the search that weighs all and for finding how little can be left undone. */
const SHARE_OF_TIME = { weighed: 0.25, parcels: 0.25, share: 0.1 } as const;
/** Less than this of a parcel, or of what a supply is to keep, is no difference. */
const LACK_SLACK = 1e-4;
/** A pack may hold a thousand units, and a millionth of it would still pack a ten-thousandth of a parcel. */
const WHOLE_WITHIN = 1e-9;

type Found = {
  readonly choice: MixChoice;
  readonly mix: CostedMix;
  readonly from: "solver" | "heuristic";
  readonly why: MixWhy | null;
};

function firstOf(question: MixQuestion, starts: readonly MixStart[]): Found {
  const greedy = greedyMix(question);
  const why: MixWhy = { kind: "no-time" };
  let best: Found = { choice: greedy, mix: costedMix(question, greedy), from: "heuristic", why };
  for (const { choice, from } of starts) {
    const mix = costedMix(question, choice);
    const isSound = mixFaults(question, mix).length === 0;
    if (isSound && !isBetterMix(best.mix, mix)) {
      best = { choice, mix, from, why };
    }
  }
  return best;
}

function goalOf(kind: "parcels" | "share" | "cost", { mix }: Found): MixGoal {
  const { parcels, share } = mix.lack;
  if (kind === "parcels") return { kind };
  return kind === "share" ? { kind, mostParcels: parcels } : { kind, mostParcels: parcels, mostShare: share };
}

type Bettered = { readonly found: Found; readonly bound: number };

async function bettered(
  question: MixQuestion,
  goal: MixGoal,
  means: PlanMeans,
  seconds: number,
  first: Found,
): Promise<Bettered> {
  const kept = (why: MixWhy | null, bound = Number.NEGATIVE_INFINITY): Bettered => {
    return { found: { ...first, why }, bound };
  };
  if (seconds <= 0) return kept({ kind: "no-time" });
  const model = mixModel(question, goal);
  const outcome = await solved(model, means, seconds, first);
  if (outcome.kind === "failed") return kept(outcome);
  const { answer } = outcome;
  if (answer.values === null) {
    return answer.kind === "stopped"
      ? kept({ kind: "stopped" }, answer.bound)
      : kept({ kind: "unsound", faults: [] });
  }
  const choice = choiceOfMixValues(model, answer.values);
  const mix = costedMix(question, choice);
  const faults = mixFaults(question, mix);
  // A solver that breaks a rule is not believed in its bound either.
  if (faults.length > 0) return kept({ kind: "unsound", faults });
  if (!isBetterMix(first.mix, mix)) {
    return { found: { choice, mix, from: "solver", why: null }, bound: answer.bound };
  }
  // A proven answer is the known plan again, but for rounding.
  return kept(answer.kind === "optimal" ? null : { kind: "stopped" }, answer.bound);
}

type Outcome =
  | { readonly kind: "answer"; readonly answer: SolverAnswer }
  | { readonly kind: "failed"; readonly message: string };

async function solved(model: MixModel, means: PlanMeans, seconds: number, first: Found): Promise<Outcome> {
  const { totalMinor, grossMinor } = first.mix.costs;
  // The solver's own gap is a share of the total, ours one of the gross cost.
  const share = Math.min(1, grossMinor / Math.max(1, Math.abs(totalMinor)));
  const isMoney = model.mixGoal.kind === "cost" || model.mixGoal.kind === "weighed";
  const gap = isMoney ? means.gap * share : 0;
  try {
    const start = mixStart(model, first.choice);
    const answer = await means.solve(modelText(model.model), {
      seconds,
      gap,
      start,
      wholeWithin: WHOLE_WITHIN,
    });
    return { kind: "answer", answer };
  } catch (error) {
    // Not lost: the plan carries the solver's words to the screen.
    return { kind: "failed", message: error instanceof Error ? error.message : String(error) };
  }
}
