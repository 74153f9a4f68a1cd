import type { CostOverWeight } from "#lib/cushioning/cost-over-weight";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

/** A stretch of bare weights over which one way is the cheapest. */
export type WeightStretch = { readonly style: string; readonly words: string };

/**
 * Over which bare weights each way is the cheapest.
 *
 * @param over cost over weight
 * @param measures the shop's measures
 * @returns stretches from light to heavy; one where the choice never turns
 */
export function weightStretches({ points, turns }: CostOverWeight, measures: Measures): WeightStretch[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const [cheapest] = [...first.totals].toSorted(([, a], [, b]) => a - b);
  const mass = (mg: number) => formatMass(milligrams(Math.round(mg)), measures);
  const edges = [first.bareMg, ...turns.map(({ bareMg }) => bareMg), last.bareMg];
  const inStyles = [cheapest?.[0] ?? "", ...turns.map(({ to }) => to)];
  return inStyles.map((style, at) => ({
    style,
    words: `${mass(edges[at] ?? 0)} to ${mass(edges[at + 1] ?? 0)}`,
  }));
}
