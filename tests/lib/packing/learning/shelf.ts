import type { CountInterval } from "#lib/packing/learning/count-interval";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";

/** Uses by step: times and what the card says, use units. */
export type Uses = Readonly<Record<string, { readonly times: number; readonly units: number }>>;

export const FIRST_DAY = day("2026-01-05");

/** The recipe of a step, by its key: what stands before the first stroke, and the version behind the second. */
export function recipeOf(stepKey: string): string {
  const [itemType = "", , version = "1"] = stepKey.split("/");
  return `${itemType} ${version}`;
}

/** Counts of a shelf a week apart, with what was used by the cards between them; nothing received or spoilt. */
export function shelf(counted: readonly number[], uses: readonly Uses[]): CountInterval[] {
  return uses.map((week, at) => ({
    from: addDays(FIRST_DAY, 7 * at),
    to: addDays(FIRST_DAY, 7 * (at + 1)),
    opening: { counted: amountOfUnits(counted[at] ?? 0), method: "number" },
    closing: { counted: amountOfUnits(counted[at + 1] ?? 0), method: "number" },
    received: amountOfUnits(0),
    spoilt: amountOfUnits(0),
    usedByBook: amountOfUnits(Object.values(week).reduce((sum, { times, units }) => sum + times * units, 0)),
    uses: Object.entries(week).map(([stepKey, { times, units }]) => ({
      stepKey,
      recipeKey: recipeOf(stepKey),
      times,
      amount: amountOfUnits(units),
    })),
  }));
}

/** Counts of a shelf from which each step takes its factor of the card, to the last bit; 50 units are left. */
export function trueShelf(uses: readonly Uses[], factors: Readonly<Record<string, number>>): CountInterval[] {
  const taken = uses.map((week) =>
    Object.entries(week).reduce(
      (sum, [key, { times, units }]) => sum + times * units * (factors[key] ?? 1),
      0,
    ),
  );
  let left = 50 + taken.reduce((sum, units) => sum + units, 0);
  const counted = [left];
  for (const units of taken) {
    left -= units;
    counted.push(left);
  }
  return shelf(counted, uses);
}
