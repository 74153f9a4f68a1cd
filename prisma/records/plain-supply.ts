import type { Supply } from "./supplies";

/** A supply of which only the name, the kind and the use unit are known: nothing measured, nothing guessed. */
export const PLAIN_SUPPLY: Omit<Supply, "id" | "name" | "kind" | "useUnit"> = {
  countUnit: null,
  countAmount: null,
  massMg: null,
  massTyped: null,
  lengthUm: null,
  widthUm: null,
  heightUm: null,
  sizesTyped: null,
  coreUm: null,
  fullUm: null,
  fullAmount: null,
  coreMassMg: null,
  sheetNm: null,
  wall: null,
  rating: null,
  ratedMassMg: null,
  guessed: false,
  note: null,
  retired: false,
  position: 0,
  goal: null,
  goalPerMille: null,
  shelfLifeDays: null,
  lastUseOn: null,
};
