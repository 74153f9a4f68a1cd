import type { CheckOutcome } from "#lib/replenishment/check-outcome";

const MOST_NAMED = 2;

/**
 * How the last check turned out, in a few sentences.
 *
 * @param outcome what was said and what came
 * @param nameOf a supply's name
 * @returns sentences in the order of their weight
 * @example outcomeWords(outcome, nameOf) // ["Nothing ran out.", "9 of 12 supplies were used about as expected."]
 */
export function outcomeWords(outcome: CheckOutcome, nameOf: (supplyId: string) => string): string[] {
  const { ranOut, expected, close, more, toOrder, ordered } = outcome;
  return [
    ranOut.length === 0 ? "Nothing ran out." : `${listed(ranOut.map(nameOf))} ran out by the book.`,
    ...(expected === 0
      ? []
      : [`${close} of ${expected} supplies were used about as expected, within a quarter.`]),
    ...more
      .slice(0, MOST_NAMED)
      .map(({ supplyId, times }) => `${nameOf(supplyId)} took ${times.toFixed(1)} times as much.`),
    ...(toOrder === 0
      ? []
      : [
          `Of ${toOrder} to order, ${ordered === toOrder ? "all" : ordered} ${ordered === 1 ? "was" : "were"} ordered.`,
        ]),
  ];
}

function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}
