import { storedMass } from "#lib/cartons/strength/stored-mass";
import type { Milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";

/**
 * Whole pounds or kilograms: above `alone` one person should think twice, above `help` lift with help. 40 to 50 lb is
 * what one person is typically given at most; the kilograms beside them are common practice, no source.
 */
export const LIFTING_LIMITS = {
  imperial: { unit: "lb", alone: 40, help: 50 },
  metric: { unit: "kg", alone: 18, help: 23 },
} as const;

/**
 * Whether a parcel should be lifted with help. A usual caution; local rules decide.
 *
 * @param grossMg packed weight
 * @param measures the shop's measures: over 50 lb, or over 23 kg
 * @returns "help" over the limit, "heavy" where one person typically reaches theirs, else "alone"
 * @see guide to handling of parcels by one person: tests/reference/carton-strength.test.ts
 * @example liftingAdvice(milligrams(23000000), "metric") // "heavy": not over 23 kg
 */
export function liftingAdvice(grossMg: Milligrams, measures: Measures): "alone" | "heavy" | "help" {
  const { unit, alone, help } = LIFTING_LIMITS[measures];
  if (grossMg > storedMass(help, unit)) return "help";
  return grossMg > storedMass(alone, unit) ? "heavy" : "alone";
}

/** A lift with two hands; lengths in inches. */
export type Lift = {
  /** from between the ankles to the hands */
  readonly reachInches: number;
  /** of the hands above the floor where the lift starts */
  readonly heightInches: number;
  /** up or down */
  readonly travelInches: number;
  /** turned to the side */
  readonly twistDegrees: number;
  /** for how often and how long, 0 to 1; 1 for a lift now and then */
  readonly frequency: number;
  /** for the grip, 0 to 1; a carton without handles 0.95 or 0.9 */
  readonly grip: number;
};

const BEST_POUNDS = 51;
const BEST_REACH = 10;
const BEST_HEIGHT = 30;
/** Nearer reach and shorter travel than this count as this. */
const LEAST_TRAVEL = 10;
/** Beyond these no weight is recommended. */
const MOST = { reach: 25, height: 70, travel: 70, twist: 135 };

/**
 * The revised lifting equation: 51 lb × 10/reach × (1 - 0.0075 |height - 30|) × (0.82 + 1.8/travel) ×
 * (1 - 0.0032 twist) × frequency × grip.
 *
 * @param lift numbers from zero
 * @returns pounds that nearly all healthy workers can lift so; 0 beyond what the equation allows
 * @throws RangeError if a number is below zero, or frequency or grip above 1
 * @see revised NIOSH lifting equation (1991): tests/reference/carton-strength.test.ts
 * @example recommendedPounds({ reachInches: 10, heightInches: 30, travelInches: 10, twistDegrees: 0, frequency: 1, grip: 1 }) // 51
 */
export function recommendedPounds(lift: Lift): number {
  const { reachInches, heightInches, travelInches, twistDegrees, frequency, grip } = lift;
  const wrong = Object.values(lift).find((each) => !(each >= 0 && Number.isFinite(each)));
  if (wrong !== undefined || frequency > 1 || grip > 1) {
    throw new RangeError(
      `recommendedPounds requires numbers from zero and shares up to 1, got ${JSON.stringify(lift)}`,
    );
  }
  const isBeyond =
    reachInches > MOST.reach ||
    heightInches > MOST.height ||
    travelInches > MOST.travel ||
    twistDegrees > MOST.twist;
  if (isBeyond) return 0;
  const horizontal = BEST_REACH / Math.max(BEST_REACH, reachInches);
  const vertical = 1 - 0.0075 * Math.abs(heightInches - BEST_HEIGHT);
  const distance = 0.82 + 1.8 / Math.max(LEAST_TRAVEL, travelInches);
  const twist = 1 - 0.0032 * twistDegrees;
  return BEST_POUNDS * horizontal * vertical * distance * twist * frequency * grip;
}
