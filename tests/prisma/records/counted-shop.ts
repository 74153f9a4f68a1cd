import type { RecipeStep } from "#lib/packing/recipe-version";
import { type Amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { recordCount } from "#prisma/records/counts";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { recordParcel } from "#prisma/records/parcels";
import { type Recipe, saveRecipe } from "#prisma/records/recipes";
import { parcelBody } from "./shop-fixture";

export const FIRST_COUNT = day("2026-03-02");
/** Mugs packed in each week between two counts: they differ, as weeks do. */
export const MUGS = [6, 3, 9, 5, 8, 4, 7];

export function fillStep(id: string, units: number, changes: Partial<RecipeStep> = {}): RecipeStep {
  const typed = { typedValue: String(units), typedUnit: "sheets" };
  const step = { id, position: 0, words: "Fill", supplyId: "paper", per: "parcel" } as const;
  return { ...step, amount: amountOfUnits(units), ...typed, ...changes };
}

export function mugCard(id: string, steps: readonly RecipeStep[], changes: Partial<Recipe> = {}): Recipe {
  const head = { id, itemTypeId: "mug", style: "paper", effectiveFrom: day("2026-01-01") } as const;
  return { ...head, commonPractice: false, note: null, cartons: [], steps, ...changes };
}

/** A parcel of so many mugs whose only line takes so many sheets. */
export function sheetsParcel(id: string, units: number, changes: Partial<ParcelBody> = {}): ParcelBody {
  const typed = { typedValue: String(units), typedUnit: "sheets" };
  const line = { supplyId: "paper", amount: amountOfUnits(units), recipeStepId: "fill", ...typed };
  return parcelBody(id, { cartons: [], zoneId: null, lines: [line], ...changes });
}

export async function countPaper(
  db: Database,
  units: number,
  at: { readonly on: Day; readonly method?: "number" | "looks-right" },
): Promise<void> {
  const { on, method = "number" } = at;
  const countedAt = `${on}T20:00:00.000Z`;
  const body = { id: `count-${on}`, supplyId: "paper", typed: String(units), note: null, countedAt, method };
  await recordCount(db, { ...body, amount: amountOfUnits(units) }, { device: "desk", now: countedAt });
}

/** What the pile holds on the day of the first count: enough for all that is packed. */
const PILE = 1000;

/**
 * A shop whose card says 11 sheets a mug and whose mugs truly take `takes`: counted on a Monday evening, then once a week.
 *
 * @returns the day of the last count
 */
export async function countedShop(db: Database, takes: number, firstCount = FIRST_COUNT): Promise<Day> {
  const effectiveFrom = addDays(firstCount, -60);
  const card = mugCard("card", [fillStep("fill", 11)], { effectiveFrom });
  await saveRecipe(db, card, `${effectiveFrom}T08:00:00.000Z`);
  await countPaper(db, PILE, { on: firstCount });
  await weeksOf(db, { from: firstCount, pile: PILE, weeks: MUGS.length, takes });
  return addDays(firstCount, 7 * MUGS.length);
}

/** So many more weeks of mugs packed by the card, each with its count on the next Monday. */
export async function weeksOf(
  db: Database,
  of: { readonly from: Day; readonly pile: number; readonly weeks: number; readonly takes: number },
): Promise<number> {
  let pile = of.pile;
  for (let week = 0; week < of.weeks; week += 1) {
    const monday = addDays(of.from, 7 * week);
    const mugs = MUGS[week % MUGS.length] ?? 0;
    for (let mug = 0; mug < mugs; mug += 1) {
      const packedOn = addDays(monday, 1 + (mug % 5));
      const now = `${packedOn}T12:00:00.000Z`;
      await recordParcel(db, sheetsParcel(`mug-${packedOn}-${mug}`, 11, { packedOn }), {
        device: "desk",
        now,
      });
    }
    pile -= mugs * of.takes;
    await countPaper(db, pile, { on: addDays(monday, 7) });
  }
  return pile;
}

export function sheets(value: Amount | undefined): number | undefined {
  return value === undefined ? undefined : unitsOf(value);
}
