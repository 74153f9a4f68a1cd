import type { PlanLimits } from "#lib/purchasing/plan/plan-limits";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanSubstitute } from "#lib/purchasing/plan/plan-substitute";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";

/**
 * What the plan is wanted for.
 * - cheapest: least cost over all weeks
 * - urgent: this week orders only what must be ordered before the next chance
 * - least-room: least peak of litres at home among plans that cost at most `extraShare` more than the cheapest
 * - within: goods and delivery of this week's orders stay within `minor`
 */
export type PlanAim =
  | { readonly kind: "cheapest" }
  | { readonly kind: "urgent" }
  | { readonly kind: "least-room"; readonly extraShare: number }
  | { readonly kind: "within"; readonly minor: number };

/** All that a joint purchase plan depends on. Every list by week has `weeks` entries. */
export type PlanQuestion = {
  readonly weeks: number;
  readonly supplies: readonly PlanSupply[];
  readonly suppliers: readonly PlanSupplier[];
  readonly offers: readonly PlanOffer[];
  readonly substitutes: readonly PlanSubstitute[];
  readonly limits: PlanLimits;
  readonly aim: PlanAim;
  /** limits stand in the way where they keep stock below what is wanted; else only where something is owed */
  readonly keepsWanted?: boolean;
};
