import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import type { MixPlan } from "#lib/cushioning/purchase/solved-mix";
import { type SwitchedType, switchedTypes } from "#lib/cushioning/purchase/switched-types";

/** A plan for a changed question, beside the plan before. */
export type MixChange = {
  readonly plan: MixPlan;
  /** by how much its total is above the one before, minor units; below 0 where it is cheaper */
  readonly moreMinor: number;
  /**
   * between which the difference of the two least totals lies, as far as both are proven; null where one is not, or where
   * the plans leave unequally much undone, as totals then tell of different things
   */
  readonly moreRange: { readonly fromMinor: number; readonly toMinor: number } | null;
  /** what it leaves undone beyond the plan before: parcels, and units below what is to be kept as a sum of shares */
  readonly moreUndone: { readonly parcels: number; readonly share: number };
  /** types that are packed in other styles than before */
  readonly switched: readonly SwitchedType[];
};

/**
 * What the plan for a changed question does otherwise than the plan before.
 *
 * @param question the changed question
 * @param before the plan for the question before the change
 * @param plan the plan for the changed one
 * @returns the plan and the difference
 */
export function mixChange(question: MixQuestion, before: MixPlan, plan: MixPlan): MixChange {
  const moreUndone = {
    parcels: plan.lack.parcels - before.lack.parcels,
    share: plan.lack.share - before.lack.share,
  };
  const apart = Math.max(Math.abs(moreUndone.parcels), Math.abs(moreUndone.share));
  return {
    plan,
    moreMinor: plan.costs.totalMinor - before.costs.totalMinor,
    moreRange: moreRange(before, plan, apart),
    moreUndone,
    switched: switchedTypes(question, before, plan),
  };
}

/** Less than this of a parcel, or of what a supply is to keep, is no difference. */
const NEARLY_NOTHING = 1e-4;

function moreRange(before: MixPlan, plan: MixPlan, undone: number): MixChange["moreRange"] {
  const lowest = before.proof.boundMinor;
  const lowestAfter = plan.proof.boundMinor;
  if (lowest === null || lowestAfter === null || undone > NEARLY_NOTHING) return null;
  return { fromMinor: lowestAfter - before.costs.totalMinor, toMinor: plan.costs.totalMinor - lowest };
}
