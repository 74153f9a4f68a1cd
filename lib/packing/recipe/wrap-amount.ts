import type { DraftSupply } from "#lib/packing/draft-supply";
import { naturalAmount } from "#lib/packing/natural-amount";
import { amountHolding, unitArea } from "#lib/packing/unit-area";
import { sheetParts } from "#lib/packing/wrap/sheet-parts";
import { tornPieces } from "#lib/packing/wrap/torn-pieces";
import type { WrapNeed } from "#lib/packing/wrap/wrap-need";
import { type Amount, unitsOf } from "#lib/units/amount";

/** Whole torn pieces go round a piece; a guard may take half of one. */
const HALVES: readonly number[] = [1, 2];

/**
 * What a wrap or a guard takes of a supply: whole or part sheets, torn pieces, or a length cut from a roll.
 *
 * @param supply - sheets or a roll, whose use unit says an area
 * @param need - the strip in theory
 * @param torn - whether a torn piece may be halved
 * @returns the amount, never less than the strip; `usedUm` of roll, null for sheets and halved pieces
 * @throws RangeError if the supply is no wrap in its use unit
 * @example wrapAmount(smallBubble, mugTwice, "whole").amount // three pieces
 */
export function wrapAmount(
  supply: Pick<DraftSupply, "supplyId" | "form" | "useUnit">,
  need: WrapNeed,
  torn: "whole" | "halves",
): { readonly amount: Amount; readonly usedUm: number | null } {
  const { form } = supply;
  const perUnit = unitArea(supply);
  if (form.kind === "loose" || perUnit === null) {
    throw new RangeError(`wrapAmount requires a supply with an area, got ${supply.supplyId}`);
  }
  if (form.kind === "sheet") return ofSheets(need, form, perUnit);
  if (torn === "halves" && form.pieceUm !== null) {
    const piece = { lengthUm: form.pieceUm, widthUm: form.widthUm };
    return ofSheets({ ...need, overlapUm: 0 }, piece, perUnit, HALVES);
  }
  const { usedUm, pieces } = tornPieces(need, form);
  const amount = amountHolding(usedUm * form.widthUm, perUnit);
  return { amount: pieces === null ? naturalAmount(amount, supply.useUnit) : amount, usedUm };
}

function ofSheets(
  need: WrapNeed,
  sheet: { readonly lengthUm: number; readonly widthUm: number },
  perUnit: number,
  parts?: readonly number[],
): { readonly amount: Amount; readonly usedUm: null } {
  const { amount } = sheetParts(need, sheet, parts);
  const area = unitsOf(amount) * sheet.lengthUm * sheet.widthUm;
  return { amount: amountHolding(area, perUnit), usedUm: null };
}
