import type { Measures } from "#lib/units/measures";
import { type ListingAnswer, listingAnswer } from "./listing-answer";
import { listingFinding } from "./listing-finding";
import { type ListingQuery, listingQuestion } from "./listing-question";
import type { ListingGround } from "./read-listing-ground";
import { refusedDraftWords } from "./refused-draft-words";
import { type SizesAnswer, sizesAnswer } from "./sizes-answer";
import { NEW_PIECE, type SizesQuestion, sizesQuestion } from "./sizes-question";

type BySizes = {
  readonly question: SizesQuestion;
  readonly draft: Extract<SizesAnswer, { readonly kind: "answered" }>["draft"];
};

/** What is said to what stands in the address; the finding is the first line. */
export type AskedListing = { readonly finding: string; readonly problems: ReadonlyMap<string, string> } & (
  | { readonly kind: "unanswered" }
  | { readonly kind: "answered"; readonly answer: ListingAnswer; readonly bySizes: BySizes | null }
);

const BLANK = "Which weight can this piece promise?";
const TO_MEND = "No promise yet: mend what is marked.";

/**
 * Answers the address: by the card of an item type, or by the sizes of a piece that is of none yet.
 *
 * @param query what stands in the address
 * @param ground what a promise is reckoned from
 * @param measures the shop's measures
 */
export function askedListing(query: ListingQuery, ground: ListingGround, measures: Measures): AskedListing {
  return query["type"] === NEW_PIECE
    ? answeredBySizes(query, ground, measures)
    : answeredByCard(query, ground, measures);
}

function answeredByCard(query: ListingQuery, ground: ListingGround, measures: Measures): AskedListing {
  const { choices, terms, postage } = ground;
  const read = listingQuestion(query, measures);
  if (read.kind === "blank") return unanswered({});
  if (read.kind === "unreadable") return unanswered(read.problems);
  if (!choices.itemTypes.some(({ id }) => id === read.question.itemTypeId)) {
    return unanswered({ type: "This item type is no longer sold: choose another, or ask by sizes." });
  }
  const answer = listingAnswer(read.question, choices, terms, postage);
  return answered(answer, null, ground, measures);
}

function answeredBySizes(query: ListingQuery, ground: ListingGround, measures: Measures): AskedListing {
  const { choices, shelf, postage } = ground;
  const cartonIds = shelf.cartons.map(({ supplyId }) => supplyId);
  const read = sizesQuestion(query, cartonIds, measures);
  if (read.kind === "unreadable") return unanswered(read.problems);
  const outcome = sizesAnswer(read.question, ground, choices, postage);
  if (outcome.kind === "no-draft") {
    const { field, words } = refusedDraftWords(outcome, choices);
    return { ...unanswered({ [field]: words }), finding: "No promise yet: this piece can’t be packed so." };
  }
  return answered(outcome.answer, { question: read.question, draft: outcome.draft }, ground, measures);
}

function unanswered(problems: Readonly<Record<string, string>>): AskedListing {
  const marked = new Map(Object.entries(problems));
  return { kind: "unanswered", finding: marked.size === 0 ? BLANK : TO_MEND, problems: marked };
}

function answered(
  answer: ListingAnswer,
  bySizes: BySizes | null,
  { choices }: ListingGround,
  measures: Measures,
): AskedListing {
  const finding = listingFinding(answer, { measures, hasSteps: choices.steps.length > 0 });
  return { kind: "answered", finding, problems: new Map(), answer, bySizes };
}
