import { packedWeightQuantile, packedWeightUpTo } from "#lib/packing/weight/packed-weight";
import { expectedPostage, type ZoneShare } from "#lib/postage/expected-postage";
import type { RateCard } from "#lib/postage/rate-card";
import { type ExpectedWeight, expectedWeight } from "../expected-weight";
import { filledCard } from "../filled-card";
import type { PackingChoices } from "../packing-choices";
import { draftFor, type PackingDraft } from "../packing-draft";
import { type WeightOutlook, weightOutlook } from "../weight-outlook";
import type { ListingQuestion } from "./listing-question";

/** What a parcel of the piece will be: packed by its card, in its likely carton. */
export type ListingAnswer = {
  readonly draft: PackingDraft;
  readonly weight: ExpectedWeight;
  /** null where a part has no mass */
  readonly outlook: WeightOutlook | null;
  /** minor units, over the shares of the zones; null without a card or a weight */
  readonly postageMinor: number | null;
};

/** What is practically never weighed. */
const TOP_CHANCE = 0.999_999;

/**
 * What to promise for a piece that is not sold yet: the same reckoning as at the bench.
 *
 * @param question what the seller says
 * @param choices what the shop has
 * @param postage the rate card that holds and how many parcels go where; card null where there is none
 */
export function listingAnswer(
  question: ListingQuestion,
  choices: PackingChoices,
  postage: { readonly card: RateCard | null; readonly zones: readonly ZoneShare[] },
): ListingAnswer {
  const own = ownMass(question, choices);
  const likely = draftFor(own, question.itemTypeId, "listing", own.today);
  const asked = {
    ...likely,
    pieces: [{ itemTypeId: question.itemTypeId, pieces: question.pieces }],
    style: question.style ?? likely.style,
  };
  const filled = filledCard(asked, own);
  const draft =
    question.cartonId === null
      ? filled
      : { ...filled, cartons: [{ supplyId: question.cartonId, sizes: "", cut: "" }] };
  const weight = expectedWeight(draft, own);
  const outlook = weightOutlook(draft, weight, own);
  return { draft, weight, outlook, postageMinor: postageOf(outlook, own, postage) };
}

/** The choices with the piece's own bare weight. */
function ownMass({ itemTypeId, bareMg }: ListingQuestion, choices: PackingChoices): PackingChoices {
  if (bareMg === null) return choices;
  const itemTypes = choices.itemTypes.map((type) =>
    type.id === itemTypeId ? { ...type, massMg: bareMg } : type,
  );
  return { ...choices, itemTypes };
}

function postageOf(
  outlook: WeightOutlook | null,
  choices: PackingChoices,
  { card, zones }: { readonly card: RateCard | null; readonly zones: readonly ZoneShare[] },
): number | null {
  if (outlook === null || card === null || zones.length === 0) return null;
  const { weight } = outlook;
  const expected = expectedPostage({
    card,
    zones,
    size: null,
    shipDay: choices.today,
    spread: {
      kind: "cumulative",
      upTo: (mg) => packedWeightUpTo(weight, mg),
      topMg: packedWeightQuantile(weight, TOP_CHANCE),
      basis: { parcels: weight.parcels, isGuess: weight.guess },
    },
  });
  return expected.kind === "expected" ? expected.minor : null;
}
