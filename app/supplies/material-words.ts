import type { Material } from "#lib/packing/material";

/** Materials as the trade calls them. */
export const MATERIAL_WORDS: Readonly<Record<Material, string>> = {
  tissue: "tissue",
  "packing-paper": "packing paper, newsprint",
  kraft: "kraft, heavy outer wrap",
  "gift-wrap": "saved gift wrap",
  "small-bubble": "small bubble, about 3/16 in",
  "large-bubble": "large bubble, about 1/2 in",
  foam: "thin foam",
  card: "card sheets, single-face roll",
  "loose-fill": "loose fill",
  "household-tape": "household tape",
  "carton-tape": "carton tape",
  "paper-tape": "paper tape, water-activated",
  "stretch-film": "stretch film",
  "rubber-band": "rubber bands",
};
