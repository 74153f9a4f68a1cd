import { materialCost } from "#lib/packing/material-cost";
import type { Amount } from "#lib/units/amount";
import { type CostValue, costValue } from "#lib/units/money";

/** A material that parcels took; `value` is what it was booked at, 1/10,000 minor unit, null where that is not known. */
export type TakenMaterial = {
  readonly supplyId: string;
  readonly kind: string;
  readonly amount: Amount;
  readonly value: number | null;
};

/** A cost on two bases, each without the supplies whose cost is not known on it. */
export type TwoCosts = {
  /** as booked on the day packed */
  readonly cash: CostValue;
  readonly cashUnknown: readonly string[];
  /** at today's prices */
  readonly replacement: CostValue;
  readonly replacementUnknown: readonly string[];
};

/** What one kind of material cost. */
export type KindCost = TwoCosts & { readonly kind: string };

/**
 * What materials cost by kind, as booked and at given prices.
 *
 * @param taken - materials in any order, a supply as often as it was taken
 * @param prices - 1/10,000 minor unit a use unit by supply id, absent where no price is known
 * @returns the kinds in the order met, and all together
 * @throws RangeError if a price is below zero or no number
 * @example costByKind([{ supplyId: "paper", kind: "paper", amount: amountOfUnits(7), value: 490_000 }],
 *   new Map([["paper", 80_000]])).total // cash 490000, replacement 560000
 */
export function costByKind(
  taken: readonly TakenMaterial[],
  prices: ReadonlyMap<string, number>,
): { readonly kinds: readonly KindCost[]; readonly total: TwoCosts } {
  const kinds = [...new Set(taken.map(({ kind }) => kind))].map((kind) => ({
    kind,
    ...twoCosts(
      taken.filter((material) => material.kind === kind),
      prices,
    ),
  }));
  return {
    kinds,
    total: {
      cash: costValue(kinds.reduce((sum, { cash }) => sum + cash, 0)),
      cashUnknown: kinds.flatMap(({ cashUnknown }) => cashUnknown),
      replacement: costValue(kinds.reduce((sum, { replacement }) => sum + replacement, 0)),
      replacementUnknown: kinds.flatMap(({ replacementUnknown }) => replacementUnknown),
    },
  };
}

function twoCosts(taken: readonly TakenMaterial[], prices: ReadonlyMap<string, number>): TwoCosts {
  const replaced = materialCost({ lines: taken, cartons: [], unitCosts: prices });
  const unbooked = taken.filter(({ value }) => value === null).map(({ supplyId }) => supplyId);
  return {
    cash: costValue(taken.reduce((sum, { value }) => sum + (value ?? 0), 0)),
    cashUnknown: [...new Set(unbooked)],
    replacement: replaced.cost,
    replacementUnknown: replaced.unknown,
  };
}
