type TableRow = readonly [upTo: number, multiplier: number];

/** What is left of the strength after days under load. */
const BY_DAYS: readonly TableRow[] = [
  [10, 0.63],
  [30, 0.6],
  [90, 0.55],
  [180, 0.5],
];
/** What is left at a relative humidity in percent. */
const BY_HUMIDITY: readonly TableRow[] = [
  [50, 1],
  [60, 0.9],
  [70, 0.8],
  [80, 0.68],
  [90, 0.48],
  [100, 0.15],
];
/** Each percent that a carton stands beside the one below costs so much of its strength. */
const LOSS_PER_OFFSET = 2.5;

/** How and how long cartons stand on each other. */
export type StackingConditions = {
  readonly days: number;
  /** relative humidity, 0 to 100 */
  readonly humidityPercent: number;
  /** how far cartons stand beside the ones below, percent of their side; 0 for a straight pile */
  readonly offsetPercent: number;
};

/** The share of the strength left with its factors, or that no table reaches so far. */
export type StrengthLeft =
  | {
      readonly kind: "left";
      readonly share: number;
      readonly time: number;
      readonly humidity: number;
      readonly offset: number;
    }
  | { readonly kind: "beyondTable"; readonly days: number };

/**
 * What is left of a carton's strength in a pile: the factors for time, damp and a crooked pile, multiplied. Between two
 * rows of a table the weaker one counts.
 *
 * @param conditions days from zero, humidity and offset from 0 to 100
 * @returns the share, or that the days go beyond the table (180)
 * @throws RangeError if a number is outside these bounds
 * @see a box maker's table of compression losses; a thesis on offset stacking: tests/reference/carton-strength.test.ts
 * @example strengthLeft({ days: 30, humidityPercent: 80, offsetPercent: 0 }) // share 0.408
 */
export function strengthLeft({ days, humidityPercent, offsetPercent }: StackingConditions): StrengthLeft {
  if (!(days >= 0)) throw new RangeError(`strengthLeft requires days from zero, got ${days}`);
  const wrong = [humidityPercent, offsetPercent].find((each) => !(each >= 0 && each <= 100));
  if (wrong !== undefined) throw new RangeError(`strengthLeft requires percent from 0 to 100, got ${wrong}`);
  const time = factorIn(BY_DAYS, days);
  const humidity = factorIn(BY_HUMIDITY, humidityPercent);
  if (time === null || humidity === null) return { kind: "beyondTable", days };
  const offset = Math.max(0, 1 - (LOSS_PER_OFFSET * offsetPercent) / 100);
  return { kind: "left", share: time * humidity * offset, time, humidity, offset };
}

function factorIn(table: readonly TableRow[], value: number): number | null {
  return table.find(([upTo]) => value <= upTo)?.[1] ?? null;
}
