import type { DraftSupply } from "#lib/packing/draft-supply";
import { MICROMETRES_PER_FOOT } from "#lib/units/length";

const MICROMETRES_PER_METRE = 1_000_000;

/**
 * The length of one use unit of what is used by its length.
 *
 * @param supply - use unit and form
 * @param stripUm - length of a strip in micrometres
 * @returns micrometres; "each" where it is counted by itself (a band); null where its unit says no length
 * @example unitLength({ useUnit: "foot", form: { kind: "roll", widthUm: 48000, pieceUm: null, thickUm: 0 } }, 76200)
 *   // 304800
 */
export function unitLength(
  supply: Pick<DraftSupply, "useUnit" | "form">,
  stripUm: number,
): number | "each" | null {
  switch (supply.useUnit) {
    case "foot":
      return MICROMETRES_PER_FOOT;
    case "metre":
      return MICROMETRES_PER_METRE;
    case "strip":
      return stripUm;
    case "each":
      return "each";
    case "piece":
      return supply.form.kind === "roll" && supply.form.pieceUm !== null ? supply.form.pieceUm : "each";
    case "sheet":
    case "square-foot":
    case "square-metre":
      return null;
    default:
      return supply.useUnit satisfies never;
  }
}
