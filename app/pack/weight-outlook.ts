import { leadingItemType } from "#lib/packing/leading-item-type";
import { type PackedWeight, packedWeight, packedWeightQuantile } from "#lib/packing/weight/packed-weight";
import { type WeightStep, weightBand } from "#lib/packing/weight/weight-band";
import type { Milligrams } from "#lib/units/mass";
import type { ExpectedWeight } from "./expected-weight";
import type { PackingChoices } from "./packing-choices";
import type { PackingDraft } from "./packing-draft";

/** What the parcel on the bench may weigh, and which band can be promised. */
export type WeightOutlook = {
  readonly weight: PackedWeight;
  /** not exceeded by the share of parcels that the shop wants to stay within a promise */
  readonly mostMg: Milligrams;
  readonly steps: readonly (WeightStep & { readonly odds: number })[];
  /** the lowest step that can be promised; null where none can */
  readonly promise: (WeightStep & { readonly odds: number }) | null;
};

/**
 * What the parcel on the bench may weigh by what past parcels weighed.
 *
 * @param draft the parcel on the bench
 * @param expected what its bill weighs
 * @param choices what is known of weights, and the steps
 * @returns null where a part has no mass or nothing is packed
 */
export function weightOutlook(
  draft: Pick<PackingDraft, "pieces" | "cartons" | "style">,
  expected: ExpectedWeight,
  choices: Pick<PackingChoices, "weights" | "steps" | "promiseShare">,
): WeightOutlook | null {
  if (expected.kind !== "expected" || expected.mg === 0) return null;
  const weight = packedWeight(choices.weights, {
    itemTypeId: leadingItemType(draft.pieces),
    cartonId: draft.cartons[0]?.supplyId ?? null,
    style: draft.style,
    predictedMg: expected.mg,
  });
  const band = weightBand(weight, choices.steps, choices.promiseShare);
  return { weight, mostMg: packedWeightQuantile(weight, choices.promiseShare), ...band };
}
