import { blockVolume } from "#lib/packing/block";
import type { DraftSupply } from "#lib/packing/draft-supply";
import { isMaterial, type Material, USUAL_LAYER_UM } from "#lib/packing/material";
import type { UseUnit } from "#lib/units/use-unit";

/** From this bubble height on, bubble is large where nobody said which it is; from this width on, tape closes cartons. */
const LARGE_BUBBLE_FROM_UM = 8_000;
const CARTON_TAPE_FROM_UM = 36_000;
/** The width of tape, film and bands says nothing about how much of them is used. */
const NARROW: readonly Material[] = [
  "household-tape",
  "carton-tape",
  "paper-tape",
  "stretch-film",
  "rubber-band",
];
const MATERIALS_BY_THE_ROLL: readonly Material[] = ["small-bubble", "large-bubble", "foam", ...NARROW];

/**
 * What a shop has written down about a supply: sizes in micrometres (of a sheet, of a torn piece and the width of its
 * roll, of a bag of loose fill), layer and crumpled bulk where it has measured them.
 */
type SupplyDescription = {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly material: string | null;
  readonly useUnit: UseUnit;
  readonly massMg: number | null;
  readonly lengthUm: number | null;
  readonly widthUm: number | null;
  readonly heightUm: number | null;
  readonly sheetNm: number | null;
  readonly layerUm: number | null;
  readonly bulkUm: number | null;
};

/** The supply as recipes are drafted with it, or what must be written down about it first. */
type DescribedSupply =
  | { readonly kind: "described"; readonly supply: DraftSupply }
  | { readonly kind: "undescribed"; readonly supplyId: string; readonly missing: "material" | "sizes" };

/**
 * Reads a supply's record as one to draft recipes with. The material is told by the kind where it was not said; a layer
 * that was never measured is the usual one of its material, and the amounts are guesses then.
 *
 * @param record - what the shop has written down
 * @returns the supply; or that its material or its sizes are missing (a carton and "other" tell no material)
 * @throws RangeError if a size of loose fill is below zero
 * @example describedSupply({ ...smallBubble, kind: "bubble", material: null }).kind // "described"
 */
export function describedSupply(record: SupplyDescription): DescribedSupply {
  const { id: supplyId, name, useUnit, massMg, bulkUm } = record;
  const material = materialOf(record);
  if (material === null) return { kind: "undescribed", supplyId, missing: "material" };
  const form = formOf(record, material);
  if (form === null) return { kind: "undescribed", supplyId, missing: "sizes" };
  const measured = record.layerUm !== null || bulkUm !== null;
  return {
    kind: "described",
    supply: { supplyId, name, material, useUnit, massMg, form, bulkUm, measured },
  };
}

function materialOf({ kind, material, layerUm, widthUm, useUnit }: SupplyDescription): Material | null {
  if (material !== null && isMaterial(material)) return material;
  switch (kind) {
    case "tissue":
      return "tissue";
    case "paper":
      return "packing-paper";
    case "bubble":
      return layerUm !== null && layerUm >= LARGE_BUBBLE_FROM_UM ? "large-bubble" : "small-bubble";
    case "tape":
      return useUnit === "strip" || (widthUm !== null && widthUm < CARTON_TAPE_FROM_UM)
        ? "household-tape"
        : "carton-tape";
    case "fill":
      return "loose-fill";
    default:
      return null;
  }
}

function formOf(record: SupplyDescription, material: Material): DraftSupply["form"] | null {
  if (material === "loose-fill") return looseForm(record);
  const thickUm = layerOf(record, material);
  const rolled = MATERIALS_BY_THE_ROLL.includes(material);
  const sheets = record.useUnit === "sheet" || (record.useUnit === "each" && !rolled);
  return sheets ? sheetForm(record, thickUm) : rollForm(record, thickUm, NARROW.includes(material));
}

function looseForm({ lengthUm, widthUm, heightUm }: SupplyDescription): DraftSupply["form"] | null {
  if (lengthUm === null || widthUm === null || heightUm === null) return null;
  const mlPerUnit = blockVolume({ lengthUm, widthUm, heightUm });
  return mlPerUnit > 0 ? { kind: "loose", mlPerUnit } : null;
}

function sheetForm({ lengthUm, widthUm }: SupplyDescription, thickUm: number): DraftSupply["form"] | null {
  return lengthUm === null || widthUm === null ? null : { kind: "sheet", lengthUm, widthUm, thickUm };
}

function rollForm(
  { lengthUm, widthUm, useUnit }: SupplyDescription,
  thickUm: number,
  narrow: boolean,
): DraftSupply["form"] | null {
  if (widthUm === null && !narrow) return null;
  return { kind: "roll", widthUm: widthUm ?? 0, pieceUm: useUnit === "piece" ? lengthUm : null, thickUm };
}

function layerOf({ layerUm, sheetNm }: SupplyDescription, material: Material): number {
  return layerUm ?? (sheetNm === null ? USUAL_LAYER_UM[material] : sheetNm / 1_000);
}
