import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { DemoParcel } from "#prisma/demo/demo-parcels";
import type { ParcelBody } from "#prisma/records/parcel-body";

/** What left the shelf: by supply, then by day. Back on the shelf is below zero. */
export type DemoUse = Map<string, Map<Day, Amount>>;

/** A roll or a sheet spoilt on a day. */
export type DemoSpoilage = {
  readonly supplyId: string;
  readonly on: Day;
  readonly units: number;
  readonly words: string;
};

/** What comes back with a returned parcel. */
export const DEMO_RETURNED = { supplyId: "small-bubble", units: 2, afterDays: 9 };

/** A parcel's materials: its lines, and one of each listed carton. */
function materialsOf(body: ParcelBody): { supplyId: string; amount: Amount }[] {
  const cartons = body.cartons.flatMap((carton) =>
    carton.supplyId === null ? [] : [{ supplyId: carton.supplyId, amount: amount(AMOUNT_PER_UNIT) }],
  );
  return [...body.lines.map((line) => ({ supplyId: line.supplyId, amount: line.amount })), ...cartons];
}

/**
 * Adds up what the demo shop's parcels and spoilage took from the shelf each day.
 *
 * @param parcels - the parcels; a void one took nothing
 * @param spoilt - what was spoilt
 * @returns use by supply and day, in 1/12,000 use unit
 * @example demoUse(parcels, []).get("tissue")?.get(day("2026-11-24"));
 */
export function demoUse(parcels: readonly DemoParcel[], spoilt: readonly DemoSpoilage[]): DemoUse {
  const use: DemoUse = new Map();
  for (const { body, fate } of parcels) {
    if (fate === "void") continue;
    for (const line of materialsOf(body)) addUse(use, line.supplyId, body.packedOn as Day, line.amount);
  }
  for (const each of spoilt) addUse(use, each.supplyId, each.on, amount(each.units * AMOUNT_PER_UNIT));
  return use;
}

/** Adds to a supply's use on a day. */
export function addUse(use: DemoUse, supplyId: string, on: Day, more: Amount): void {
  const days = use.get(supplyId) ?? new Map<Day, Amount>();
  use.set(supplyId, days);
  days.set(on, amount((days.get(on) ?? 0) + more));
}

/** What a supply used from one day to another, both included. */
export function usedBetween(use: DemoUse, supplyId: string, first: Day, last: Day): Amount {
  const days = [...(use.get(supplyId) ?? [])];
  return amount(days.reduce((sum, [on, used]) => (first <= on && on <= last ? sum + used : sum), 0));
}
