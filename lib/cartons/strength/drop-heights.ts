import { storedMass } from "#lib/cartons/strength/stored-mass";
import type { Milligrams } from "#lib/units/mass";

/** Heights in inches from which a packed parcel may fall, by test procedure; null where its table has no such weight. */
export type DropHeights = {
  /** test without vibration on the way, ISTA 1A */
  readonly ista1aInches: number | null;
  /** test after climate, ISTA 2A */
  readonly ista2aInches: number | null;
  /** ASTM D4169 schedule A, hard, usual and mild handling; from memory */
  readonly d4169Inches: readonly [hard: number, usual: number, mild: number] | null;
};

/** From these pounds on, until the next row. */
const ISTA: readonly (readonly [fromPounds: number, ista1a: number, ista2a: number])[] = [
  [0, 30, 38],
  [21, 24, 32],
  [41, 18, 26],
  [61, 12, 20],
  [100, 8, 12],
];
const ISTA_MOST_POUNDS = 150;

/** Up to these pounds. */
const D4169: readonly (readonly [upToPounds: number, inches: readonly [number, number, number]])[] = [
  [20, [24, 15, 9]],
  [40, [21, 13, 8]],
  [60, [18, 12, 7]],
  [80, [15, 10, 6]],
  [100, [12, 9, 5]],
  [200, [10, 7, 4]],
];

/** What recorders in 25 parcels sent there and back saw in 1993: a one-way trip's drops, and their heights in inches. */
export const DROPS_SEEN = { perTrip: 10, mostlyUnderInches: 32, highestInches: 72.5 } as const;

/** Dense contents: the pack should survive this drop on its smallest face. */
export const DENSE_DROP_INCHES = 36;

/**
 * From how high tests drop a parcel of a weight: lighter parcels are thrown, heavy ones are set down. A weight on the
 * bound of two rows is in the heavier one for ISTA; for ASTM D4169 it is in the lighter, that is the higher drop.
 *
 * @param grossMg packed weight, above zero
 * @returns heights in inches
 * @throws RangeError if the weight is zero
 * @see ISTA procedures 1A and 2A, ASTM D4169: tests/reference/carton-strength.test.ts
 * @example dropHeights(milligrams(2267962)).ista1aInches // 30, for 5 lb
 */
export function dropHeights(grossMg: Milligrams): DropHeights {
  if (!(grossMg > 0)) throw new RangeError(`dropHeights requires a weight above zero, got ${grossMg}`);
  const ista = ISTA.findLast(([from]) => grossMg >= storedMass(from, "lb"));
  const inTable = ista !== undefined && grossMg <= storedMass(ISTA_MOST_POUNDS, "lb");
  const d4169 = D4169.find(([upTo]) => grossMg <= storedMass(upTo, "lb"));
  return {
    ista1aInches: inTable ? ista[1] : null,
    ista2aInches: inTable ? ista[2] : null,
    d4169Inches: d4169?.[1] ?? null,
  };
}
