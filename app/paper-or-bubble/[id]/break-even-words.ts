import { breakEven } from "#lib/cushioning/break-even";
import type { Comparison } from "#lib/cushioning/comparison";

/**
 * At which price of a supply the choice turns, in words.
 *
 * @param comparison of the two ways
 * @param supply its id, its name and the word of a use unit
 * @param priceNow 1/10,000 minor unit a use unit
 * @param money a price for a use unit with its sign
 * @returns one sentence; null where both take as much of it
 */
export function breakEvenWords(
  { cheaper, dearer }: Comparison,
  supply: { readonly id: string; readonly name: string; readonly unit: string },
  priceNow: number,
  money: (value: number) => string,
): string | null {
  const turn = breakEven(cheaper, dearer, supply.id, priceNow);
  const { name, unit } = supply;
  if (turn.kind === "alike") return null;
  if (turn.kind === "never") return `Even with ${name} for nothing, ${turn.cheaper} stays cheaper.`;
  return `With ${name} at ${money(turn.price)} a ${unit} both cost the same: below it ${turn.below} is cheaper, above it ${turn.above}. The sums here take it at ${money(priceNow)}.`;
}
