import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { isBetterMix } from "#lib/cushioning/purchase/is-better-mix";
import { mixFaults } from "#lib/cushioning/purchase/mix-faults";
import { mixProof } from "#lib/cushioning/purchase/mix-proof";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import type { MixPlan, MixStart } from "#lib/cushioning/purchase/solved-mix";

/**
 * A plan, or a better one among others that were found for like questions: a change may lead the solver to what it missed
 * before. What is proven stays so, and is held against the better plan.
 *
 * @param question all of the mix, checked
 * @param plan the best plan known for it
 * @param others choices made for like questions; those that break a rule of this one do not count
 * @param gapAsked the gap within which a plan counts as proven
 * @returns the best of them
 */
export function betteredBy(
  question: MixQuestion,
  plan: MixPlan,
  others: readonly MixStart[],
  gapAsked: number,
): MixPlan {
  let best = plan;
  for (const { choice, from } of others) {
    const mix = costedMix(question, choice);
    if (!isBetterMix(mix, best) || mixFaults(question, mix).length > 0) continue;
    const leastUndone = plan.proof.leastUndone || mix.lack.parcels + mix.lack.share === 0;
    const bound = plan.proof.boundMinor ?? Number.NEGATIVE_INFINITY;
    const proof = mixProof(mix.costs, { bound, leastUndone, gapAsked, seconds: plan.proof.seconds });
    best = { ...mix, proof, from, why: plan.why ?? { kind: "stopped" } };
  }
  return best;
}
