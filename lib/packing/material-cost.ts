import { AMOUNT_PER_UNIT, type Amount } from "#lib/units/amount";
import { type CostValue, costValue } from "#lib/units/money";

/** What materials cost; `unknown` names the supplies whose price is not known and that are left out. */
export type MaterialCost = { readonly cost: CostValue; readonly unknown: readonly string[] };

/**
 * What the materials of a parcel cost at given prices, rounded once.
 *
 * @param parcel - `lines`: amounts of supplies. `cartons`: supply ids, one each. `unitCosts`: 1/10,000 minor unit a use
 *   unit by supply id, null or absent where no price is known
 * @returns the nearest 1/10,000 minor unit, and the ids without a price, each once in the order met
 * @throws RangeError if a price is below zero or no number
 * @example materialCost({ lines: [{ supplyId: "paper", amount: amountOfUnits(7) }], cartons: [],
 *   unitCosts: new Map([["paper", 70_000]]) }).cost // 490000, 49 cents
 */
export function materialCost(parcel: {
  readonly lines: readonly { readonly supplyId: string; readonly amount: Amount }[];
  readonly cartons: readonly string[];
  readonly unitCosts: ReadonlyMap<string, number | null>;
}): MaterialCost {
  const loads = [
    ...parcel.lines.map(({ supplyId, amount }) => ({ supplyId, parts: amount as number })),
    ...parcel.cartons.map((supplyId) => ({ supplyId, parts: AMOUNT_PER_UNIT })),
  ].map((load) => ({ ...load, unitCost: parcel.unitCosts.get(load.supplyId) ?? null }));
  const wrong = loads.find(
    ({ unitCost }) => unitCost !== null && !(unitCost >= 0 && Number.isFinite(unitCost)),
  );
  if (wrong !== undefined) {
    throw new RangeError(
      `materialCost requires prices from zero, got ${wrong.unitCost} of ${wrong.supplyId}`,
    );
  }
  const sum = loads.reduce((all, { parts, unitCost }) => all + (unitCost ?? 0) * parts, 0);
  const unknown = loads.filter(({ unitCost, parts }) => unitCost === null && parts !== 0);
  return {
    cost: costValue(Math.round(sum / AMOUNT_PER_UNIT)),
    unknown: [...new Set(unknown.map(({ supplyId }) => supplyId))],
  };
}
