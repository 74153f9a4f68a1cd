import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** What a supply is made of, as far as wrapping, filling and standing in for one another goes. */
export type Material =
  | "tissue"
  | "packing-paper"
  | "kraft"
  | "gift-wrap"
  | "small-bubble"
  | "large-bubble"
  | "foam"
  | "card"
  | "loose-fill"
  | "household-tape"
  | "carton-tape"
  | "paper-tape"
  | "stretch-film"
  | "rubber-band";

const inches = (count: number): number => count * MICROMETRES_PER_INCH;

/**
 * How thick a layer of each material is in micrometres until a shop has measured its own; nothing for what is poured or
 * counted. Bubble goes by the height of its bubbles, packing paper by a measured ream (1.5 in for 500 sheets, one
 * person's reading); the rest is from memory.
 */
export const USUAL_LAYER_UM: Readonly<Record<Material, number>> = {
  tissue: 30,
  "packing-paper": 76,
  kraft: 100,
  "gift-wrap": 80,
  "small-bubble": inches(3 / 16),
  "large-bubble": inches(1 / 2),
  foam: inches(1 / 8),
  card: 3_000,
  "loose-fill": 0,
  "household-tape": 50,
  "carton-tape": 50,
  "paper-tape": 120,
  "stretch-film": 20,
  "rubber-band": 0,
};

/**
 * Whether a stored or sent text names a material.
 *
 * @param text - any text
 * @returns true for a material
 * @example isMaterial("small-bubble") // true
 */
export function isMaterial(text: string): text is Material {
  return Object.hasOwn(USUAL_LAYER_UM, text);
}

/** Every material, in the order in which a form offers them. */
export const MATERIALS: readonly Material[] = Object.keys(USUAL_LAYER_UM).filter(isMaterial);
