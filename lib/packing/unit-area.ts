import type { DraftSupply } from "#lib/packing/draft-supply";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { MICROMETRES_PER_FOOT } from "#lib/units/length";

const MICROMETRES_PER_METRE = 1_000_000;
/** A shave of the last stored part, so that a float's last digit does not cost a part more. */
const SHAVE = 1e-6;

/**
 * The flat area of one use unit of a supply.
 *
 * @param supply - use unit and form
 * @returns square micrometres; null where the unit says no area (loose fill, a roll by the piece that does not tear, tape of no
 *   width)
 * @example unitArea({ useUnit: "foot", form: { kind: "roll", widthUm: 304800, pieceUm: null, thickUm: 0 } })
 *   // 92903040000, a square foot
 */
export function unitArea(supply: Pick<DraftSupply, "useUnit" | "form">): number | null {
  const { form, useUnit } = supply;
  if (form.kind === "loose" || form.widthUm <= 0) return null;
  switch (useUnit) {
    case "square-foot":
      return MICROMETRES_PER_FOOT ** 2;
    case "square-metre":
      return MICROMETRES_PER_METRE ** 2;
    case "foot":
      return form.widthUm * MICROMETRES_PER_FOOT;
    case "metre":
      return form.widthUm * MICROMETRES_PER_METRE;
    case "sheet":
    case "piece":
    case "each":
      return form.kind === "sheet" ? form.lengthUm * form.widthUm : pieceArea(form);
    case "strip":
      return null;
    default:
      return useUnit satisfies never;
  }
}

function pieceArea(roll: { readonly widthUm: number; readonly pieceUm: number | null }): number | null {
  return roll.pieceUm === null ? null : roll.widthUm * roll.pieceUm;
}

/**
 * The least amount that has an area, or anything else that a use unit holds so much of.
 *
 * @param measure - what is wanted, zero or more
 * @param perUnit - the same of one use unit, above zero
 * @returns the amount, rounded up to 1/12,000 use unit
 * @throws RangeError if a number is not as said
 * @example amountHolding(92903040000, 46451520000) // two use units
 */
export function amountHolding(measure: number, perUnit: number): Amount {
  if (!(measure >= 0 && perUnit > 0)) {
    throw new RangeError(
      `amountHolding requires a measure from zero and a unit above it, got ${measure} and ${perUnit}`,
    );
  }
  return amount(Math.ceil((measure / perUnit) * AMOUNT_PER_UNIT - SHAVE));
}
