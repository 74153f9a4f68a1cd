import { formatMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { oddsWords } from "../odds-words";
import type { ListingAnswer } from "./listing-answer";

const GUESS_WORDS: Readonly<Record<ListingAnswer["from"], string>> = {
  card: " A guess, until five such parcels were weighed.",
  sizes: " A guess from its sizes alone.",
};

/**
 * The first line: what to promise.
 *
 * @param answer what the parcel will be
 * @param shop measures, and whether there are steps to promise
 * @returns one sentence
 */
export function listingFinding(
  { from, outlook, weight }: Pick<ListingAnswer, "from" | "outlook" | "weight">,
  { measures, hasSteps }: { readonly measures: Measures; readonly hasSteps: boolean },
): string {
  if (outlook === null) {
    return weight.kind === "part-known" && weight.unknown.length > 0
      ? `No promise yet: ${weight.unknown.join(", ")} was never weighed.`
      : "No promise yet: nothing is packed.";
  }
  const guess = outlook.weight.guess ? GUESS_WORDS[from] : "";
  const most = `${formatMass(outlook.weight.likelyMg, measures)} likely, under ${formatMass(outlook.mostMg, measures)}`;
  if (!hasSteps) return `${most} 9 times in 10.${guess}`;
  if (outlook.promise === null) return `No step is sure enough: ${most}.${guess}`;
  return `Promise up to ${outlook.promise.label}: ${oddsWords(outlook.promise.odds)}.${guess}`;
}
