import { cartonCost } from "#lib/cartons/cost/carton-cost";
import { blockVolume } from "#lib/packing/block";
import type { CartonShelf } from "./read-carton-shelf";
import type { ShelfCarton } from "./shelf-carton";

/**
 * What the most frequent parcel in a carton should weigh.
 *
 * @param carton the carton
 * @param shelf what was packed, and what fills
 * @returns milligrams; null where nothing was packed in it whose weight is known
 */
export function usualGrossMg(carton: ShelfCarton, shelf: CartonShelf): number | null {
  const { terms } = shelf;
  const usual = shelf.packed.loads.find(
    ({ kind, load }) => kind.cartonId === carton.id && load.ml <= blockVolume(carton.inside),
  );
  if (terms === null || usual === undefined) return null;
  const { id, inside, boardUm, massMg, value } = carton;
  return cartonCost(usual.load, { id, inside, boardUm, massMg, value: value ?? 0 }, terms.terms).massMg;
}
