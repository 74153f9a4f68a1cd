import { billOfMaterials } from "#lib/packing/bill";
import type { Block } from "#lib/packing/block";
import type { SupplyTerms } from "#lib/packing/card-sum";
import type { Habits } from "#lib/packing/habits";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import type { DraftedMass } from "#lib/packing/recipe/drafted-mass";
import type { DraftShelf } from "../../recipes/[id]/draft/draft-shelf";
import type { ExpectedWeight } from "../expected-weight";
import type { PackingChoices } from "../packing-choices";
import { weightOutlook } from "../weight-outlook";
import { type ListingPostage, likelyPostage } from "./likely-postage";
import type { ListingAnswer } from "./listing-answer";
import { type NearEnoughDraft, nearEnoughDraft } from "./near-enough-draft";
import { neededInside } from "./needed-inside";
import { packingCost } from "./packing-cost";
import { UNSOLD } from "./piece-of-sizes";
import type { SizesQuestion } from "./sizes-question";

/** A card drafted from sizes with what it comes to; or why there is none, and which inside size would do. */
export type SizesAnswer =
  | {
      readonly kind: "answered";
      readonly answer: ListingAnswer;
      readonly draft: Extract<NearEnoughDraft, { readonly kind: "drafted" }>;
    }
  | {
      readonly kind: "no-draft";
      readonly draft: Exclude<NearEnoughDraft, { readonly kind: "drafted" }>;
      /** null where no carton is to blame */
      readonly needed: Block | null;
    };

/** What a shop packs with and by. */
export type SizesGround = {
  readonly habits: Habits;
  readonly shelf: DraftShelf;
  readonly terms: SupplyTerms;
};

/**
 * What to promise for a piece that was never sold: a card is drafted from its sizes by the shop's habits and shelf, in
 * the smallest carton that leaves the cushion, and weighed and priced like any other. Its spread is that of a guess.
 *
 * @param question the piece and how it is packed
 * @param ground habits, shelf and what supplies cost
 * @param choices what the shop has and what is known of its weights
 * @param postage the rate card that holds and how many parcels go where
 */
export function sizesAnswer(
  question: SizesQuestion,
  { habits, shelf, terms }: SizesGround,
  choices: PackingChoices,
  postage: ListingPostage,
): SizesAnswer {
  const { piece, pieces, cartonId } = question;
  const style = question.style ?? choices.defaultStyle;
  const { measures } = choices;
  const request = { piece, pieces, habits, supplies: chosenSupplies(style, shelf.supplies), measures };
  const cartons = shelf.cartons.filter(({ supplyId }) => cartonId === null || supplyId === cartonId);
  const draft = nearEnoughDraft(request, cartons, cartonId !== null);
  if (draft.kind !== "drafted") {
    const needed = draft.kind === "no-carton" ? neededInside(request, draft.tight) : null;
    return { kind: "no-draft", draft, needed };
  }
  const { recipe } = draft;
  const version = { id: "draft", itemTypeId: UNSOLD, style, effectiveFrom: choices.today };
  const bill = billOfMaterials({
    parts: [
      { itemTypeId: UNSOLD, pieces, recipe: { ...version, steps: recipe.steps, cartons: recipe.cartons } },
    ],
  });
  const packed = {
    pieces: [{ itemTypeId: UNSOLD, pieces }],
    cartons: bill.cartons.map((supplyId) => ({ supplyId, sizes: "", cut: "" })),
    style,
  };
  const weight = weightOfDraft(recipe.mass, choices);
  const outlook = weightOutlook(packed, weight, choices);
  const answer: ListingAnswer = {
    from: "sizes",
    style,
    cartonId: draft.carton.supplyId,
    weight,
    outlook,
    cost: packingCost(bill, terms),
    postageMinor: likelyPostage(outlook, postage, choices.today),
  };
  return { kind: "answered", answer, draft };
}

function weightOfDraft({ mg, unknown }: DraftedMass, { supplies }: PackingChoices): ExpectedWeight {
  if (unknown.length === 0) return { kind: "expected", mg };
  const names = unknown.map((id) => supplies.find((supply) => supply.id === id)?.name ?? id);
  return { kind: "part-known", knownMg: mg, unknown: names };
}
