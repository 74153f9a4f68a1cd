import type { KindsTotal } from "#lib/cushioning/parcel-kind";
import type { CushionAnswer } from "./cushion-answer";
import { type MoneyAndMass, minorText } from "./why-words";

/**
 * Why all on bubble costs more or less than all on paper, part by part: the parts add up to the difference of the totals.
 *
 * @param answer totals by style
 * @param shop how it writes money
 * @returns one sentence; empty where there are not both
 */
export function totalsReason({ allIn }: Pick<CushionAnswer, "allIn">, shop: MoneyAndMass): string {
  const [paper, bubble] = [allIn.get("paper"), allIn.get("bubble")];
  if (paper === undefined || bubble === undefined) return "";
  const moved = (minor: number, same: string, than: string) =>
    Math.round(minor) === 0
      ? same
      : `${minorText(Math.abs(minor), shop)} ${minor > 0 ? "more" : "less"}${than}`;
  const dearer = bubble.materialsMinor - paper.materialsMinor;
  const materials = `the materials cost ${moved(dearer, "the same as on paper", " than on paper")}`;
  const postage = `the postage ${moved(bubble.postageMinor - paper.postageMinor, "the same", "")}`;
  const rest = restOf(bubble) - restOf(paper);
  return Math.round(rest) === 0
    ? `All on bubble, ${materials}, and ${postage}.`
    : `All on bubble, ${materials}, ${postage}, and time and breakage ${moved(rest, "the same", "")}.`;
}

/** What a total holds beside materials and postage: time and breakage, where they are counted. */
function restOf({ totalMinor, materialsMinor, postageMinor }: KindsTotal): number {
  return totalMinor - materialsMinor - postageMinor;
}
