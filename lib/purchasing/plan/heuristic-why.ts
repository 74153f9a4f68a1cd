import type { PlanFault } from "#lib/purchasing/plan/plan-faults";

/** Why the plan is not the solver's. */
export type HeuristicWhy =
  /** no time was given */
  | { readonly kind: "no-time" }
  /** the solver was not asked: the plan is near enough to the bound, or the question too large for it */
  | { readonly kind: "spared" }
  /** the solver found none in its time that is as cheap */
  | { readonly kind: "stopped" }
  /** the solver failed; its own words */
  | { readonly kind: "failed"; readonly message: string }
  /** the solver said that there is none, or gave one that breaks a rule */
  | { readonly kind: "unsound"; readonly faults: readonly PlanFault[] };
