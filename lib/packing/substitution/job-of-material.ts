import type { Material } from "#lib/packing/material";
import type { RecipeStep } from "#lib/packing/recipe-version";
import type { WrapJob } from "#lib/packing/substitution/substitution-rule";

/**
 * The job that a material most likely has in a step, for steps that were written by hand and name none: what is taken
 * once a parcel fills, what is taken for a piece wraps.
 *
 * @param material - what the step takes
 * @param per - whether it is taken for each piece or once a parcel
 * @returns the job
 * @see common practice, no source
 * @example jobOfMaterial("packing-paper", "parcel") // "fill"
 */
export function jobOfMaterial(material: Material, per: RecipeStep["per"]): WrapJob {
  switch (material) {
    case "tissue":
      return per === "parcel" ? "fill" : "surface";
    case "packing-paper":
    case "gift-wrap":
    case "small-bubble":
    case "large-bubble":
    case "foam":
      return per === "parcel" ? "fill" : "shock";
    case "kraft":
    case "card":
      return "brace";
    case "loose-fill":
      return "fill";
    case "household-tape":
    case "stretch-film":
    case "rubber-band":
      return "bind";
    case "carton-tape":
    case "paper-tape":
      return "seal";
    default:
      return material satisfies never;
  }
}
