import { cutPlan } from "#lib/cartons/fit/cut-plan";
import {
  type FitEffort,
  MOST_LOOKS,
  PIECES_SEARCHED_THROUGH,
  QUICK_EFFORT,
} from "#lib/cartons/fit/fit-effort";
import type { FitProblem, PlacedSides } from "#lib/cartons/fit/fit-problem";
import { greedyPacking } from "#lib/cartons/fit/greedy-packing";
import { greedyPasses, shuffledPass } from "#lib/cartons/fit/greedy-passes";
import type { NoFitReason } from "#lib/cartons/fit/no-fit-reason";
import { type PairSearchEnd, pairSearch, type SearchFirst } from "#lib/cartons/fit/pair-search";
import { scaledVolume } from "#lib/cartons/fit/scaled-volume";
import { evenRandom } from "#lib/statistics/even-random";

/** What was tried in vain. */
export type FitTries = {
  /** greedy passes, one block after the other */
  readonly passes: number;
  /** whether a plan of straight cuts was looked for */
  readonly hasCutPlan: boolean;
  /** states of the search of all arrangements */
  readonly states: number;
};

export type PackingEnd =
  | { readonly kind: "found"; readonly placed: readonly PlacedSides[] }
  | { readonly kind: "none"; readonly reason: NoFitReason }
  | { readonly kind: "not-proven"; readonly tried: FitTries };

/**
 * Looks for a packing, the quick ways first. Up to six blocks every arrangement is searched in the end; with more, also
 * orders by chance and plans of straight cuts, and the search ends with its budget.
 *
 * @param problem - room above zero and blocks, micrometres
 * @param effort - how hard to look with more than six blocks
 * @returns a place for each block, that there is none, or what was tried; the same for the same problem on any machine
 * @example packingSearch({ room: [11, 11, 11], pieces: [[[6, 6, 6]], [[6, 6, 6]]] }, USUAL_EFFORT).kind // "none"
 */
export function packingSearch(problem: FitProblem, effort: FitEffort): PackingEnd {
  const passes = greedyPasses(problem);
  for (const pass of passes) {
    const placed = greedyPacking(problem, pass);
    if (placed) return { kind: "found", placed };
  }
  const share = problem.pieces.length > PIECES_SEARCHED_THROUGH ? scaledVolume(problem) : 0;
  if (share > 1 + ROUNDING) return { kind: "none", reason: { kind: "rows", share } };
  const isSearchedThrough = problem.pieces.length <= PIECES_SEARCHED_THROUGH;
  const first = arrangements(problem, isSearchedThrough ? MOST_LOOKS : QUICK_EFFORT.looks, "pairs");
  if (first.kind !== "budget-ended") return first;
  const tried = { passes: passes.length, hasCutPlan: false, states: first.steps };
  return isSearchedThrough ? { kind: "not-proven", tried } : longSearch(problem, effort, tried);
}

/** Ten blocks make 28,501 splits; each block more makes three times as many. */
const MOST_CUT_BLOCKS = 10;
const SEED = 1;
/** Shares are sums of some products of doubles; this is far above their rounding. */
const ROUNDING = 1e-9;

function longSearch(problem: FitProblem, effort: FitEffort, before: FitTries): PackingEnd {
  const random = evenRandom(SEED);
  for (let shuffle = 0; shuffle < effort.shuffles; shuffle++) {
    const placed = greedyPacking(problem, shuffledPass(problem.pieces.length, random));
    if (placed) return { kind: "found", placed };
  }
  const tried = { ...before, passes: before.passes + effort.shuffles };
  if (effort.looks <= QUICK_EFFORT.looks) return { kind: "not-proven", tried };
  const turned = arrangements(problem, QUICK_EFFORT.looks, "turns");
  if (turned.kind !== "budget-ended") return turned;
  const hasCutPlan = effort.groups > 0 && problem.pieces.length <= MOST_CUT_BLOCKS;
  const cut = hasCutPlan ? cutPlan(problem, effort.groups) : null;
  if (cut) return { kind: "found", placed: cut };
  const all = arrangements(problem, effort.looks, "pairs");
  if (all.kind !== "budget-ended") return all;
  return { kind: "not-proven", tried: { ...tried, hasCutPlan, states: turned.steps + all.steps } };
}

type Arrangements = Exclude<PairSearchEnd, { kind: "none" }> | Extract<PackingEnd, { kind: "none" }>;

function arrangements(problem: FitProblem, looks: number, by: SearchFirst): Arrangements {
  const blocks = problem.pieces.length;
  const pairs = Math.max(1, (blocks * (blocks - 1)) / 2);
  const end = pairSearch(problem, Math.ceil(looks / pairs), by);
  return end.kind === "none" ? { kind: "none", reason: { kind: "all-searched", states: end.steps } } : end;
}
