import type { Solve } from "#lib/optimisation/solve";

/** What the plan needs from outside. */
export type PlanMeans = {
  readonly solve: Solve;
  /** time for the plan, 0 for the heuristic alone; naming the limits that block may take two more */
  readonly seconds: number;
  /** stop when the plan is proven to be within this share of the cheapest */
  readonly gap: number;
  /** a clock in seconds */
  readonly now: () => number;
};
