import { type ExactMass, nanogramsOf } from "#lib/postage/exact-mass";
import { lengthAndGirth } from "#lib/postage/length-and-girth";
import { lengthAsTyped, longestFirst, type ParcelSize, type Sides, sidesIn } from "#lib/postage/parcel-size";
import { compareRatios, ratioText } from "#lib/postage/ratio";
import { measureWords, type TypedLength, type TypedMass } from "#lib/postage/typed-measure";
import type { Ratio } from "#lib/units/number-text";

/** What a parcel may at most be; null where there is no such limit. At the limit is within it. */
export type SizeWalls = {
  readonly longest: TypedLength | null;
  readonly lengthAndGirth: TypedLength | null;
  /** three sides in any order; a parcel may be turned to fit */
  readonly sides: readonly [TypedLength, TypedLength, TypedLength] | null;
  /** of the packed weight, whatever the dimensional weight is */
  readonly weight: TypedMass | null;
};

/** No limits at all. */
export const NO_WALLS: SizeWalls = { longest: null, lengthAndGirth: null, sides: null, weight: null };

/** A limit that a parcel is over. */
export type WallHit = {
  readonly wall: "longest" | "lengthAndGirth" | "sides" | "weight";
  readonly words: string;
};

/**
 * The limits that a parcel is over, each compared in the limit's own unit.
 *
 * @param walls the limits
 * @param size outside sizes, or null where they are not known: then only the weight is looked at
 * @param weight packed weight
 * @returns empty for a parcel within all of them
 */
export function wallsHit(walls: SizeWalls, size: ParcelSize | null, weight: ExactMass): WallHit[] {
  return [...(size === null ? [] : sizeHits(walls, size)), ...weightHits(walls, weight)];
}

function sizeHits(walls: SizeWalls, size: ParcelSize): WallHit[] {
  const hits: WallHit[] = [];
  if (walls.longest !== null) {
    const [length] = longestFirst(sidesIn(size, walls.longest.unit));
    if (isOver(length, walls.longest))
      hits.push(hit("longest", "The longest side is", length, walls.longest));
  }
  if (walls.lengthAndGirth !== null) {
    const { sum } = lengthAndGirth(sidesIn(size, walls.lengthAndGirth.unit));
    if (isOver(sum, walls.lengthAndGirth)) {
      hits.push(hit("lengthAndGirth", "Length and girth are", sum, walls.lengthAndGirth));
    }
  }
  if (walls.sides !== null) hits.push(...sideHits(walls.sides, size));
  return hits;
}

function sideHits(limits: readonly [TypedLength, TypedLength, TypedLength], size: ParcelSize): WallHit[] {
  const names = ["The longest side is", "The second side is", "The shortest side is"];
  return sortedLimits(limits).flatMap((limit, at) => {
    const side = sideAt(longestFirst(sidesIn(size, limit.unit)), at);
    return isOver(side, limit) ? [hit("sides", names[at] ?? "", side, limit)] : [];
  });
}

function sideAt([longest, second, shortest]: Sides, at: number): Ratio {
  if (at === 0) return longest;
  return at === 1 ? second : shortest;
}

/** The limits by their length, whatever their units: all are measured in micrometres. */
function sortedLimits(limits: readonly TypedLength[]): readonly TypedLength[] {
  return limits.toSorted((a, b) => compareRatios(lengthAsTyped(b), lengthAsTyped(a)));
}

function weightHits({ weight: limit }: SizeWalls, weight: ExactMass): WallHit[] {
  if (limit === null || compareRatios(weight.ng, nanogramsOf(limit)) <= 0) return [];
  return [
    { wall: "weight", words: `The parcel weighs ${weight.text}; at most ${measureWords(limit)} is taken.` },
  ];
}

function isOver(value: Ratio, limit: TypedLength): boolean {
  return compareRatios(value, limit.value) > 0;
}

function hit(wall: WallHit["wall"], before: string, value: Ratio, limit: TypedLength): WallHit {
  return {
    wall,
    words: `${before} ${ratioText(value)} ${limit.unit}; at most ${measureWords(limit)} is taken.`,
  };
}
