import { AMOUNT_PER_UNIT, type Amount, amount, amountOfUnits } from "#lib/units/amount";
import { amountAsTyped, parseAmount } from "#lib/units/amount-text";
import { fractionText } from "#lib/units/fraction-text";
import type { Measures } from "#lib/units/measures";
import { type UseUnit, unitWord } from "#lib/units/use-unit";
import type { SupplyChoice } from "./packing-choices";
import type { CardLine } from "./packing-draft";

type Shown = { readonly shownUnit: string; readonly oneShown: Amount };

/**
 * The unit in which a line is shown: the one that the recipe's writer typed, where it can be turned into the
 * supply's use unit; else the use unit.
 * @param supply what the line takes
 * @param typedUnit unit as typed in the recipe; null where there is none
 * @param measures the shop's measures
 * @returns the unit's name and the amount of one of it
 */
export function shownUnit(supply: SupplyChoice, typedUnit: string | null, measures: Measures): Shown {
  const own: Shown = { shownUnit: supply.unit, oneShown: amount(AMOUNT_PER_UNIT) };
  if (typedUnit === null || typedUnit === "") return own;
  const one = parseAmount(`1 ${typedUnit}`, supply.unit, measures);
  if (one.kind === "unreadable" || one.amount <= 0 || one.amount === AMOUNT_PER_UNIT) return own;
  return { shownUnit: typedUnit, oneShown: one.amount };
}

/**
 * The amount of a line as a person reads it: "1⅓ sheets", "7¼ ft", "2 pieces".
 * @param line a line of the card
 * @param unit the supply's use unit
 * @returns value and unit
 */
export function lineText(line: CardLine, unit: UseUnit): string {
  if (line.shownUnit === unit) return amountAsTyped(line.amount, unit);
  return `${lineValue(line)} ${line.shownUnit}`;
}

/**
 * The value of a line in its shown unit, without the unit: "1⅓".
 * @param line a line of the card
 * @returns the value as typed text
 */
export function lineValue(line: CardLine): string {
  const count = line.amount / line.oneShown;
  return fractionText(amountOfUnits(count), AMOUNT_PER_UNIT) ?? String(Number(count.toFixed(DECIMALS_KEPT)));
}

/**
 * The word for the unit of a line, as it is sent and kept beside the amount.
 * @param line a line of the card
 * @param unit the supply's use unit
 * @returns "sheets", "in"; empty for each
 */
export function lineUnit(line: CardLine, unit: UseUnit): string {
  return line.shownUnit === unit ? unitWord(unit, line.amount / line.oneShown) : line.shownUnit;
}

const DECIMALS_KEPT = 4;

/**
 * The amount after one press of plus or minus; never below nothing.
 * @param line a line of the card
 * @param parts how many of one shown unit a press takes: 2 for halves
 * @param direction 1 for more, -1 for less
 * @returns the new amount
 * @example steppedAmount({ amount: 12000, oneShown: 12000 }, 3, 1) // 16000, a sheet and a third
 */
export function steppedAmount(line: CardLine, parts: number, direction: 1 | -1): Amount {
  return amount(Math.max(0, line.amount + direction * Math.round(line.oneShown / parts)));
}
