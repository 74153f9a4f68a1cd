import type { KindAnswer } from "../cushion-answer";
import { leftOutOf } from "../cushion-finding";
import { onStyle } from "../on-style";
import { untoldPostage } from "../untold-postage";
import { type MoneyAndMass, minorText } from "../why-words";

/**
 * Which way to pack one kind of parcel is cheapest, and by how much.
 *
 * @param name of the parcel
 * @param kind its ways
 * @param shop how it writes money
 * @returns "Framed tile: cheaper on bubble, by $0.75 a parcel."
 */
export function kindFinding(name: string, { costs, comparisons }: KindAnswer, shop: MoneyAndMass): string {
  const [nearest] = comparisons;
  if (nearest === undefined) {
    return costs.length === 0
      ? `${name}: there is no card to reckon by.`
      : `${name}: one card, nothing to compare.`;
  }
  const untold = comparisons.map(untoldPostage).find((each) => each !== null) ?? null;
  if (untold !== null)
    return `${name}: its postage ${onStyle(untold)} is not known, so nothing to compare yet.`;
  const bare = leftOutOf([{ costs }]);
  if (Math.round(nearest.savesMinor) === 0) return `${name}: both ways cost the same${bare}.`;
  const style = onStyle(nearest.cheaper.way.style);
  return `${name}: cheaper ${style}, by ${minorText(nearest.savesMinor, shop)} a parcel${bare}.`;
}
