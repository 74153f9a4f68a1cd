import type { StepOdds } from "#lib/postage/expected-postage";
import { compareRatios } from "#lib/postage/ratio";
import type { StepHit } from "#lib/postage/step-for";

/** A step that one way to pack stays under more often than the other. */
export type DroppedStep = {
  readonly step: StepHit;
  /** share of the parcels that pay this step or a lighter one only when packed the lighter way */
  readonly share: number;
  /** which of the two stays under it more often */
  readonly lighter: "one" | "other";
};

/** A share of parcels that nobody would see. */
const LEAST_SHARE = 0.005;
/** A chance that even over all steps of a card adds up to nothing that is seen. */
const NEVER = 1e-9;

/**
 * The step that divides two ways to pack most: the greatest difference between their odds of staying under a step.
 *
 * @param one odds by step of one way, lightest first
 * @param other those of the other
 * @returns null where no step divides them by more than 5 parcels of 1,000
 * @example droppedStep(bubble.steps, paper.steps)?.share // 0.61: 61 % of these parcels come under 1 lb on bubble alone
 */
export function droppedStep(one: readonly StepOdds[], other: readonly StepOdds[]): DroppedStep | null {
  let most: DroppedStep | null = null;
  const [oneLikely, otherLikely] = [likely(one), likely(other)];
  for (const { step } of [...oneLikely, ...otherLikely]) {
    const ahead = oddsUnder(oneLikely, step) - oddsUnder(otherLikely, step);
    const share = Math.abs(ahead);
    if (share > Math.max(LEAST_SHARE, most?.share ?? 0))
      most = { step, share, lighter: ahead > 0 ? "one" : "other" };
  }
  return most;
}

/** Between steps that a parcel may pay the odds stay as they are: most of a card's steps need no look. */
function likely(steps: readonly StepOdds[]): readonly StepOdds[] {
  return steps.filter(({ chance }) => chance > NEVER);
}

/** Steps that a parcel cannot pay are not in its list: the last one not above counts. */
function oddsUnder(steps: readonly StepOdds[], { upToNg }: StepHit): number {
  return steps.findLast((each) => compareRatios(each.step.upToNg, upToNg) <= 0)?.upTo ?? 0;
}
