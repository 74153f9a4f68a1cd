import type { Material } from "#lib/packing/material";
import type { UseUnit } from "#lib/units/use-unit";

/**
 * How a supply comes, in micrometres: sheets, a roll (with the length of a torn piece, null where it is cut), or
 * loose fill by the millilitres in one use unit.
 */
type SupplyForm =
  | {
      readonly kind: "sheet";
      readonly lengthUm: number;
      readonly widthUm: number;
      readonly thickUm: number;
    }
  | {
      readonly kind: "roll";
      readonly widthUm: number;
      readonly pieceUm: number | null;
      readonly thickUm: number;
    }
  | { readonly kind: "loose"; readonly mlPerUnit: number };

/**
 * A supply as a recipe is drafted with it. `bulkUm` is the shop's own measure of how thick it lies when crumpled,
 * null where the usual one holds; `measured` says that the shop has measured what its amounts depend on.
 */
export type DraftSupply = {
  readonly supplyId: string;
  readonly name: string;
  readonly material: Material;
  readonly useUnit: UseUnit;
  readonly massMg: number | null;
  readonly form: SupplyForm;
  readonly bulkUm: number | null;
  readonly measured: boolean;
};
