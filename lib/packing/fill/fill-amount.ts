import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillBulk } from "#lib/packing/fill/fill-bulk";
import type { FillManner, Habits } from "#lib/packing/habits";
import { amountHolding, unitArea } from "#lib/packing/unit-area";
import type { Amount } from "#lib/units/amount";

const CUBIC_MICROMETRES_PER_MILLILITRE = 1e12;

/** The amount that fills a void in theory; `no-fill` where a supply, in its use unit, fills nothing. */
export type FillReading =
  | { readonly kind: "fill"; readonly theory: Amount; readonly mlPerUnit: number }
  | { readonly kind: "no-fill" };

/**
 * What a void takes of a supply, in theory: void / what one use unit fills. Sheets and film go by their flat area
 * times how thick they lie; loose fill by its volume, a little over.
 *
 * @param ml - void in millilitres, zero or more
 * @param supply - the fill
 * @param habits - usual bulk and overfill
 * @param manner - stuffed firm or laid loose
 * @returns the amount, rounded up to 1/12,000 use unit, and what one use unit fills
 * @throws RangeError if the void is below zero
 * @see from memory: 52 cu in firm and 86 loose to a sheet of 24 x 36 in; other sizes by area
 * @example fillAmount(19927, packingPaper, USUAL_HABITS, "firm") // 23.4 sheets in the 1216 cu in round an 8 in cube
 */
export function fillAmount(
  ml: number,
  supply: Pick<DraftSupply, "material" | "bulkUm" | "useUnit" | "form">,
  habits: Pick<Habits, "bulkUm" | "looseOverfill">,
  manner: FillManner,
): FillReading {
  if (supply.form.kind === "loose") {
    const mlPerUnit = supply.form.mlPerUnit / habits.looseOverfill;
    return { kind: "fill", theory: amountHolding(ml, mlPerUnit), mlPerUnit };
  }
  const area = unitArea(supply);
  const bulk = fillBulk(supply, habits, manner);
  if (area === null || bulk === null) return { kind: "no-fill" };
  const mlPerUnit = (area * bulk) / CUBIC_MICROMETRES_PER_MILLILITRE;
  return { kind: "fill", theory: amountHolding(ml, mlPerUnit), mlPerUnit };
}
