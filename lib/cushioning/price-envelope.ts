import { breakEven, totalAtPrice } from "#lib/cushioning/break-even";
import { cheapestWay } from "#lib/cushioning/parcel-kind";
import type { WayCost } from "#lib/cushioning/way-cost";
import type { CushionStyle } from "#lib/packing/recipe-version";

/** Prices nearer to each other than this are one: 1/10,000 minor unit. */
const SAME_PRICE = 1;

/** Prices over which one style stays the cheapest; 1/10,000 minor unit a use unit. */
export type PriceSpan = {
  readonly style: CushionStyle;
  readonly from: number;
  /** infinite for the last */
  readonly to: number;
};

/**
 * Which style is the cheapest at each price of a supply: the lower edge of the straight lines that their totals are. It
 * turns only where two of them meet.
 *
 * @param costs of ways to pack the same parcel, at the price now
 * @param supplyId the supply whose price moves
 * @param priceNow 1/10,000 minor unit a use unit, as it is in the totals
 * @returns spans from a price of 0 on, each with another style than the one before; empty without a way
 * @example priceEnvelope([paper, bubble], "large-bubble", 252_000) // bubble up to 330,000, then paper
 */
export function priceEnvelope(costs: readonly WayCost[], supplyId: string, priceNow: number): PriceSpan[] {
  const meets = costs.flatMap((one, at) =>
    costs.slice(at + 1).flatMap((other) => {
      const turn = breakEven(one, other, supplyId, priceNow);
      return turn.kind === "turns" ? [turn.price] : [];
    }),
  );
  const edges = [0, ...apart(meets.toSorted((a, b) => a - b)), Number.POSITIVE_INFINITY];
  const spans: PriceSpan[] = [];
  for (const [at, from] of edges.slice(0, -1).entries()) {
    const to = edges[at + 1] ?? Number.POSITIVE_INFINITY;
    const inside = Number.isFinite(to) ? (from + to) / 2 : from + 1;
    const cheapest = cheapestWay(
      costs.map((cost) => ({ ...cost, totalMinor: totalAtPrice(cost, supplyId, priceNow, inside) })),
    );
    if (cheapest === null) continue;
    const { style } = cheapest.way;
    const before = spans.at(-1);
    if (before?.style === style) spans[spans.length - 1] = { ...before, to };
    else spans.push({ style, from, to });
  }
  return spans;
}

/** Lines that meet in one point meet there but for the rounding of the last digit. */
function apart(prices: readonly number[]): number[] {
  return prices.filter((price, at) => price - (prices[at - 1] ?? 0) >= SAME_PRICE);
}
