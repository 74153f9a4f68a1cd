import type { SupplyTerms } from "#lib/packing/card-sum";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { type ExpectedWeight, expectedWeight } from "../expected-weight";
import { filledCard } from "../filled-card";
import type { PackingChoices } from "../packing-choices";
import { draftFor, type PackingDraft } from "../packing-draft";
import { type WeightOutlook, weightOutlook } from "../weight-outlook";
import { type ListingPostage, likelyPostage } from "./likely-postage";
import type { ListingQuestion } from "./listing-question";
import { type PackingCost, packingCost } from "./packing-cost";

/** What a parcel of the piece will be. */
export type ListingAnswer = {
  /** The card of its item type, or a card drafted from its sizes. */
  readonly from: "card" | "sizes";
  readonly style: CushionStyle;
  /** The outermost carton; null where none is named. */
  readonly cartonId: string | null;
  readonly weight: ExpectedWeight;
  /** null where a part has no mass */
  readonly outlook: WeightOutlook | null;
  readonly cost: PackingCost;
  /** minor units, over the shares of the zones; null without a card or a weight */
  readonly postageMinor: number | null;
};

/**
 * What to promise for a piece that is not sold yet: the same reckoning as at the bench, packed by the card of its item
 * type in its likely carton.
 *
 * @param question what the seller says
 * @param choices what the shop has
 * @param terms what supplies cost
 * @param postage the rate card that holds and how many parcels go where
 */
export function listingAnswer(
  question: ListingQuestion,
  choices: PackingChoices,
  terms: SupplyTerms,
  postage: ListingPostage,
): ListingAnswer {
  const own = ownMass(question, choices);
  const likely = draftFor(own, question.itemTypeId, "listing", own.today);
  const asked = {
    ...likely,
    pieces: [{ itemTypeId: question.itemTypeId, pieces: question.pieces }],
    style: question.style ?? likely.style,
  };
  const filled = filledCard(asked, own);
  const draft = { ...filled, cartons: cartonsOf(question, likely, filled) };
  const weight = expectedWeight(draft, own);
  const outlook = weightOutlook(draft, weight, own);
  const cartons = draft.cartons.flatMap(({ supplyId }) => supplyId ?? []);
  return {
    from: "card",
    style: draft.style,
    cartonId: cartons[0] ?? null,
    weight,
    outlook,
    cost: packingCost({ lines: draft.lines, cartons }, terms),
    postageMinor: likelyPostage(outlook, postage, own.today),
  };
}

/** The carton chosen; else the one of the last parcel, where that had as many pieces in the same style; else the card's. */
function cartonsOf(
  { cartonId, pieces }: ListingQuestion,
  likely: PackingDraft,
  filled: PackingDraft,
): PackingDraft["cartons"] {
  if (cartonId !== null) return [{ supplyId: cartonId, sizes: "", cut: "" }];
  const isAsLast = likely.style === filled.style && likely.pieces[0]?.pieces === pieces;
  return isAsLast ? likely.cartons : filled.cartons;
}

/** The choices with the piece's own bare weight. */
function ownMass({ itemTypeId, bareMg }: ListingQuestion, choices: PackingChoices): PackingChoices {
  if (bareMg === null) return choices;
  const itemTypes = choices.itemTypes.map((type) =>
    type.id === itemTypeId ? { ...type, massMg: bareMg } : type,
  );
  return { ...choices, itemTypes };
}
