import { type DroppedStep, droppedStep } from "#lib/cushioning/dropped-step";
import type { WayCost } from "#lib/cushioning/way-cost";

/** Parts of what a parcel costs. */
export type CostPart = "materials" | "postage" | "minutes" | "breakage";

/** A chance that nobody would see. */
const UNSEEN = 0.005;

/** Two ways held against each other. */
export type Comparison = {
  readonly cheaper: WayCost;
  readonly dearer: WayCost;
  /** minor units a parcel, not rounded, from 0 */
  readonly savesMinor: number;
  /** dearer less cheaper, by part; what the cheaper way pays more of is below 0. Minor units */
  readonly parts: Readonly<Record<CostPart, number>>;
  /** the part that decides: most in favour of the cheaper way */
  readonly decidedBy: CostPart;
  /** what the cheaper way weighs less, milligrams; below 0 where it is the heavier one; null where one has no weight */
  readonly savedMg: number | null;
  /** the step that the lighter way more often stays under; null where both pay each step as often, or none is known */
  readonly dropped: DroppedStep | null;
  /** false: one of them leaves out a price or a weight, or the card does not carry it at every weight */
  readonly isWhole: boolean;
};

/**
 * Holds ways to pack a parcel against the cheapest one.
 *
 * @param costs of ways to pack the same parcel
 * @returns the cheapest against each other way, the nearest first; empty for fewer than two ways
 * @example comparisons([paper, bubble])[0]?.cheaper.way.style // "bubble"
 */
export function comparisons(costs: readonly WayCost[]): Comparison[] {
  const [cheaper, ...others] = costs.toSorted((a, b) => a.totalMinor - b.totalMinor);
  return cheaper === undefined ? [] : others.map((dearer) => comparison(cheaper, dearer));
}

/**
 * Two ways held against each other.
 *
 * @param cheaper costs no more than the other
 * @param dearer the other
 * @throws RangeError if the first costs more
 */
export function comparison(cheaper: WayCost, dearer: WayCost): Comparison {
  const savesMinor = dearer.totalMinor - cheaper.totalMinor;
  if (!(savesMinor >= 0))
    throw new RangeError(`comparison requires the cheaper way first, got ${savesMinor} saved`);
  const parts = {
    materials: dearer.materialsMinor - cheaper.materialsMinor,
    postage: (dearer.postageMinor ?? 0) - (cheaper.postageMinor ?? 0),
    minutes: (dearer.minutesMinor ?? 0) - (cheaper.minutesMinor ?? 0),
    breakage: (dearer.breakageMinor ?? 0) - (cheaper.breakageMinor ?? 0),
  };
  const [one, other] = [cheaper.way.weight, dearer.way.weight];
  return {
    cheaper,
    dearer,
    savesMinor,
    parts,
    decidedBy: leading(parts),
    savedMg: one === null || other === null ? null : other.meanMg - one.meanMg,
    dropped:
      cheaper.postage === null || dearer.postage === null
        ? null
        : droppedStep(cheaper.postage.steps, dearer.postage.steps),
    isWhole: isWholeCost(cheaper) && isWholeCost(dearer),
  };
}

function isWholeCost({ unpriced, postage }: WayCost): boolean {
  return unpriced.length === 0 && postage !== null && postage.notCarried < UNSEEN;
}

function leading(parts: Comparison["parts"]): CostPart {
  const order: readonly CostPart[] = ["postage", "materials", "minutes", "breakage"];
  return order.reduce((best, part) => (parts[part] > parts[best] ? part : best), "postage");
}
