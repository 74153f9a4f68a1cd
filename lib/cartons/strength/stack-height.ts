import type { CartonCompression } from "#lib/cartons/strength/box-compression";
import { type StackingConditions, strengthLeft } from "#lib/cartons/strength/strength-left";
import { MILLIGRAMS_PER_POUND, type Milligrams } from "#lib/units/mass";

/** Divides what is left for what no table here counts: knocks, overhang, weak corners. A guess, no source. */
export const USUAL_SAFETY_FACTOR = 2;

/** What a stack height takes for granted, whatever the numbers. */
const ALWAYS = ["likeCartons", "slottedAndTaped", "levelFloor", "contentsBearNothing"] as const;

/** A thing taken for granted; the screen has the words. */
export type StackAssumption =
  | (typeof ALWAYS)[number]
  | "straightPile"
  | "edgeCrushFromBurst"
  | "shallowCarton"
  | "boardTrustedLess";

/** How high packed cartons of one kind may be piled, and why. */
export type StackHeight =
  | {
      readonly kind: "stack";
      /** cartons in the pile, the lowest one included; at least 1 */
      readonly cartons: number;
      readonly compressionPounds: number;
      readonly shareLeft: number;
      /** what may lie on the lowest carton */
      readonly bearsPounds: number;
      readonly safetyFactor: number;
      readonly assumes: readonly StackAssumption[];
    }
  | { readonly kind: "beyondTable"; readonly days: number };

/** A pile to be judged. */
export type StackQuestion = {
  readonly compression: CartonCompression;
  /** packed weight of each carton, above zero */
  readonly grossMg: Milligrams;
  readonly conditions: StackingConditions;
  /** divides what is left, 1 or more */
  readonly safetyFactor?: number;
  /** trusted share of the board in whole percent; under 100 for reused board */
  readonly trustedPercent?: number;
};

/**
 * How many like cartons may stand on each other: all above the lowest weigh at most
 * compression × trusted share × share left / safety factor.
 *
 * @param question the carton, what it weighs, how and how long it stands
 * @returns the pile with what it assumes, or that the days go beyond the table
 * @throws RangeError if the weight is zero, the factor under 1 or the share not from 1 to 100
 * @see boxCompression and strengthLeft; the safety factor is a guess
 * @example stackHeight({ compression, grossMg: milligrams(9071847), conditions }) // 229 lb left: 5 + 1 cartons of 20 lb
 */
export function stackHeight(question: StackQuestion): StackHeight {
  const { compression, grossMg, conditions } = question;
  const { safetyFactor = USUAL_SAFETY_FACTOR, trustedPercent = 100 } = question;
  if (!(grossMg > 0)) throw new RangeError(`stackHeight requires a weight above zero, got ${grossMg}`);
  if (!(safetyFactor >= 1)) throw new RangeError(`stackHeight requires a factor from 1, got ${safetyFactor}`);
  if (!(trustedPercent >= 1 && trustedPercent <= 100)) {
    throw new RangeError(`stackHeight requires a share from 1 to 100 %, got ${trustedPercent}`);
  }
  const left = strengthLeft(conditions);
  if (left.kind === "beyondTable") return left;
  const bearsPounds = (compression.pounds * (trustedPercent / 100) * left.share) / safetyFactor;
  return {
    kind: "stack",
    cartons: 1 + Math.floor(bearsPounds / (grossMg / MILLIGRAMS_PER_POUND)),
    compressionPounds: compression.pounds,
    shareLeft: left.share,
    bearsPounds,
    safetyFactor,
    assumes: assumptions(compression, conditions, trustedPercent),
  };
}

function assumptions(
  compression: CartonCompression,
  { offsetPercent }: StackingConditions,
  trustedPercent: number,
): readonly StackAssumption[] {
  return [
    ...ALWAYS,
    ...(offsetPercent === 0 ? ["straightPile" as const] : []),
    ...(compression.edgeCrushFrom === "paired" ? ["edgeCrushFromBurst" as const] : []),
    ...(compression.isShallow ? ["shallowCarton" as const] : []),
    ...(trustedPercent < 100 ? ["boardTrustedLess" as const] : []),
  ];
}
