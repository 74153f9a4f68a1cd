import type { CostedMix } from "#lib/cushioning/purchase/costed-mix";
import type { MixChoice } from "#lib/cushioning/purchase/mix-choice";

/**
 * What a mix decides, without what follows from it.
 *
 * @param mix a costed mix
 * @returns its packs and its split
 */
export function choiceOfMix({ orders, split }: Pick<CostedMix, "orders" | "split">): MixChoice {
  const lines = orders.flatMap((order) => order.lines.map(({ offerId, packs }) => ({ offerId, packs })));
  return { lines, split };
}
