import type { WeightStep } from "#lib/packing/weight/weight-band";
import { milligramsOf, nanogramsOf } from "#lib/postage/exact-mass";
import type { RateCard } from "#lib/postage/rate-card";
import { measureWords } from "#lib/postage/typed-measure";

/**
 * The weight steps that can be promised.
 *
 * @param card the rate card that holds, or null
 * @returns each weight once, the lightest first; none without a card
 */
export function promiseSteps(card: RateCard | null): WeightStep[] {
  const steps = (card?.bands ?? []).flatMap((band) =>
    band.steps.map(({ upTo }) => ({ label: measureWords(upTo), mg: milligramsOf(nanogramsOf(upTo)) })),
  );
  return steps
    .filter((step, at) => steps.findIndex(({ mg }) => mg === step.mg) === at)
    .sort((one, other) => one.mg - other.mg);
}
