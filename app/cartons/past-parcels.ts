import { type CartonCost, type CartonTerms, cartonCost } from "#lib/cartons/cost/carton-cost";
import type { PastParcel } from "#lib/cartons/idle/past-parcel";
import { loadTypeOf } from "#lib/cartons/strength/load-type";
import { blockVolume } from "#lib/packing/block";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { KindLoad, PackedLoads } from "./packed-loads";
import type { ShelfCarton } from "./shelf-carton";

/** All goods of such a shop are fragile until said otherwise. */
const LOAD_TYPE = loadTypeOf({ isFragile: true, isDense: false, fillsBox: false });

/**
 * What was packed, one by one, each with what it comes to in the carton that it went in: reckoned like in any other
 * carton and at today's prices, so that two cartons compare by what they take and not by when they were bought.
 *
 * @param packed parcels packed alike
 * @param cartons the cartons of the shelf
 * @param termsIn what packing costs in a style; null where nothing fills
 * @returns parcels whose carton is known; those that it would not hold as reckoned are left out
 */
export function pastParcels(
  packed: PackedLoads,
  cartons: readonly ShelfCarton[],
  termsIn: (style: CushionStyle) => CartonTerms | null,
): PastParcel[] {
  const byId = new Map(cartons.map((carton) => [carton.id, carton]));
  return packed.loads.flatMap((each, at) => {
    const carton = byId.get(each.kind.cartonId ?? "");
    const terms = termsIn(each.kind.style);
    if (carton === undefined || terms === null || each.load.ml > blockVolume(carton.inside)) return [];
    const { id, inside, boardUm, massMg, value } = carton;
    const cost = cartonCost(each.load, { id, inside, boardUm, massMg, value: value ?? 0 }, terms);
    return Array.from({ length: each.kind.parcels }, (_, copy) =>
      pastParcel(`${at} ${copy}`, each, terms, cost),
    );
  });
}

function pastParcel(
  id: string,
  { kind, load, clearance }: KindLoad,
  terms: CartonTerms,
  cost: CartonCost,
): PastParcel {
  return {
    id,
    itemTypeId: kind.pieces[0]?.itemTypeId ?? "",
    cartonId: kind.cartonId ?? "",
    load,
    loadType: LOAD_TYPE,
    clearance,
    terms,
    paid: {
      materialsValue: cost.totalValue - (cost.postageValue ?? 0),
      postageValue: cost.postageValue,
    },
  };
}
