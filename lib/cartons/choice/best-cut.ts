import type { ToBeat } from "#lib/cartons/choice/carton-choice";
import { type CutDown, type CutRequest, cutDown } from "#lib/cartons/choice/cut-down";
import { leastCutValue } from "#lib/cartons/choice/lowest-cut";
import { type PricedCarton, spentValue } from "#lib/cartons/choice/priced-carton";

/** A carton, and how it would be cut down. */
export type CutCarton = { readonly priced: PricedCarton; readonly cut: CutDown };

/**
 * The carton that costs least when cut down, if that is less than the best so far in one of the two ways of counting. Those
 * with the lowest bound are searched first, so that few are. One that is too large for any postage may get one when cut.
 *
 * @param priced cartons to look at, uncut
 * @param best what is to be beaten
 * @param request load, clearance, terms, minutes and what they cost
 * @returns the carton with its cut, or null
 * @throws RangeError as `cutDown`
 */
export function bestCut(
  priced: readonly PricedCarton[],
  best: ToBeat,
  request: CutRequest,
): CutCarton | null {
  const beats = ({ carton }: PricedCarton, value: number): boolean =>
    value < best.value || value - spentValue(carton) < best.asSpentValue;
  const isLike = ({ cost }: CutDown): boolean => !best.hasPostage || cost.postageValue !== null;
  const bounded = priced
    .flatMap((each) => {
      const leastValue = leastCutValue(each.carton, request);
      return leastValue === null || !beats(each, leastValue) ? [] : [{ each, leastValue }];
    })
    .toSorted((a, b) => a.leastValue - b.leastValue);

  let found: CutCarton | null = null;
  for (const { each, leastValue } of bounded) {
    if (found !== null && leastValue >= found.cut.netValue) break;
    const under = Math.max(best.value, best.asSpentValue + spentValue(each.carton));
    const cut = cutDown(each, request, Math.min(under, found?.cut.netValue ?? under));
    if (cut === null || !isLike(cut) || !beats(each, cut.netValue)) continue;
    found = { priced: each, cut };
  }
  return found;
}
