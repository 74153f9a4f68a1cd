import type { CardTerms } from "#app/recipes/card-fields.ts";

const supply = (name: string, kind: string, useUnit: "sheet" | "foot" | "each", retired = false) => ({
  name,
  kind,
  useUnit,
  retired,
});

/** Supplies of an invented shop, as the form of a card is read with them. */
export const CARD_TERMS: CardTerms = {
  measures: "imperial",
  supplies: new Map([
    ["tissue", supply("White tissue", "tissue", "sheet")],
    ["paper", supply("Packing paper", "paper", "sheet")],
    ["old-paper", supply("Old paper", "paper", "sheet", true)],
    ["tape", supply("Carton tape", "tape", "foot")],
    ["cube-8", supply("Carton 8 × 8 × 8", "carton", "each")],
    ["old-cube", supply("Old carton", "carton", "each", true)],
  ]),
};

/** A card as its form sends it. */
export const TYPED_CARD = {
  "place.0": "1",
  "words.0": "Wrap it",
  "supplyId.0": "tissue",
  "amount.0": "1 1/3",
  "per.0": "piece",
  "place.1": "2",
  "words.1": "Fill the carton",
  "supplyId.1": "paper",
  "amount.1": "7",
  "per.1": "parcel",
  "place.2": "3",
  "supplyId.2": "tissue",
  "per.2": "piece",
  "upTo.0": "1",
  "cartonId.0": "cube-8",
  "cartonId.1": "cube-8",
  mass: "370 g",
  effectiveFrom: "2026-11-25",
};
