import { cheapestWay } from "#lib/cushioning/parcel-kind";
import type { WayCost } from "#lib/cushioning/way-cost";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { CushionAnswer, KindAnswer } from "./cushion-answer";
import { onStyle } from "./on-style";
import { type MoneyAndMass, minorText } from "./why-words";

/**
 * What the screen found: which style is cheaper for what the shop sends, and where the other one is.
 *
 * @param answer of `cushionAnswer`
 * @param shop how it writes money
 * @returns one sentence
 */
export function cushionFinding(answer: CushionAnswer, shop: MoneyAndMass): string {
  const nothing = nothingFound(answer);
  if (nothing !== null) return nothing;
  const { kinds, allIn, best } = answer;
  const [leading, second] = [...allIn].toSorted(([, a], [, b]) => a.totalMinor - b.totalMinor);
  if (leading === undefined || second === undefined) return "Every kind of parcel has one way to pack alone.";
  const [style] = leading;
  const bare = leftOutOf(kinds);
  const others = kinds.filter((kind) => isCheaperElsewhere(kind, style));
  if (others.length === 0) {
    const saved = second[1].totalMinor - best.totalMinor;
    if (Math.round(saved) === 0)
      return `All ${onStyle(style)} and all ${onStyle(second[0])} cost the same${bare}.`;
    const hasAll = kinds.every(({ costs }) => costs.some(({ way }) => way.style === style));
    const what = hasAll ? "for all that you send" : "wherever you have a card for it";
    return `${titleOf(style)} ${what}: ${minorText(saved, shop)} cheaper than all ${onStyle(second[0])}${bare}.`;
  }
  const saved = leading[1].totalMinor - best.totalMinor;
  const [other, ...more] = new Set(others.flatMap(({ costs }) => cheapestWay(costs)?.way.style ?? []));
  const where = other === undefined || more.length > 0 ? "another way" : onStyle(other);
  const many =
    others.length === 1 ? "one kind of parcel is" : `${others.length} of ${kinds.length} kinds of parcel are`;
  return `${titleOf(style)} as a rule, but ${many} cheaper ${where}, which saves ${minorText(saved, shop)}${bare}.`;
}

/** Neither a price nor postage: the sum of such a way is 0 and says nothing. */
function isNothingKnown({ materialsMinor, unpriced, postageMinor }: WayCost): boolean {
  return materialsMinor === 0 && unpriced.length > 0 && postageMinor === null;
}

/**
 * What the sums of parcels leave out, to stand behind what is said of them.
 *
 * @param kinds of parcels
 * @returns ", postage left out"; empty where all is known
 */
export function leftOutOf(kinds: readonly Pick<KindAnswer, "costs">[]): string {
  const isUnpriced = kinds.some(({ costs }) => costs.some(({ unpriced }) => unpriced.length > 0));
  const left = [
    ...(isPostageLeftOut(kinds) ? ["postage"] : []),
    ...(isUnpriced ? ["what has no price"] : []),
  ];
  return left.length === 0 ? "" : `, ${left.join(" and ")} left out`;
}

/**
 * Whether postage counts as nothing throughout: no rate card holds, or it takes none of the parcels.
 *
 * @param kinds of parcels
 */
export function isPostageLeftOut(kinds: readonly Pick<KindAnswer, "costs">[]): boolean {
  return kinds.every(({ costs }) => costs.every(({ postageMinor }) => postageMinor === null));
}

/** What is said where nothing can be compared; null where something can. */
function nothingFound({ kinds, untold, single }: CushionAnswer): string | null {
  if (kinds.length === 0 && untold.length > 0) {
    return "Not to be told yet: of each kind of parcel the postage is known on one side alone.";
  }
  if (kinds.length === 0 && single.length === 0) {
    return "Nothing to compare yet: no parcel was packed of late, and none is expected.";
  }
  if (kinds.length === 0) {
    return "Nothing to compare yet: an item type needs a recipe in two cushion styles.";
  }
  if (kinds.every(({ costs }) => costs.every(isNothingKnown))) {
    return "Not to be told yet: nothing that these parcels take has a price, and their postage is not known.";
  }
  return null;
}

/** Whether another way costs less, to the coin. */
function isCheaperElsewhere({ costs }: KindAnswer, style: CushionStyle): boolean {
  const own = costs.find(({ way }) => way.style === style);
  const best = cheapestWay(costs);
  return own !== undefined && best !== null && Math.round(own.totalMinor - best.totalMinor) > 0;
}

function titleOf(style: CushionStyle): string {
  return { paper: "Paper", bubble: "Bubble", mixed: "Mixed" }[style];
}
