import { type Amount, amountOfUnits } from "#lib/units/amount";
import { amountAsTyped, formatAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";

/** A first guess of how a supply is sold: in the pack that it is counted in. */
export type CountedPack = { readonly pack: string; readonly packAmount: Amount; readonly packTyped: string };

/**
 * The pack that a supply is counted in, as an offer's first guess; one use unit where it is counted singly.
 *
 * @param supply how it is used and counted
 * @returns the pack in words and as an amount
 * @example countedPack({ useUnit: "foot", countUnit: "roll", countAmount: amountOfUnits(175) }).pack // "roll of 175 ft"
 */
export function countedPack(supply: {
  readonly useUnit: UseUnit;
  readonly countUnit: string | null;
  readonly countAmount: Amount | null;
}): CountedPack {
  if (supply.countUnit === null || supply.countAmount === null) {
    const one = amountOfUnits(1);
    return { pack: "one", packAmount: one, packTyped: amountAsTyped(one, supply.useUnit) };
  }
  const isSized = /\d/.test(supply.countUnit);
  return {
    pack: isSized
      ? supply.countUnit
      : `${supply.countUnit} of ${formatAmount(supply.countAmount, supply.useUnit)}`,
    packAmount: supply.countAmount,
    packTyped: amountAsTyped(supply.countAmount, supply.useUnit),
  };
}
