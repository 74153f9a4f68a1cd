import { describedSupply } from "#lib/packing/described-supply";
import type { DraftSupply } from "#lib/packing/draft-supply";
import type { DraftCarton } from "#lib/packing/recipe/draft-request";
import type { Supply } from "#prisma/records/supplies";
import { boardUmOf } from "../../../cartons/carton-board";

/** What a shop can draft with, and what it must describe first. */
export type DraftShelf = {
  readonly supplies: readonly DraftSupply[];
  readonly cartons: readonly DraftCarton[];
  /** without a material or sizes, in the shop's order */
  readonly undescribed: readonly Supply[];
};

/**
 * The supplies in use as recipes are drafted with them. Of film by its area one size alone is the width of its roll.
 *
 * @param supplies supplies in use, in the shop's order
 * @param preferred ids that go before the others of their material
 * @returns wraps, fills and tapes; cartons; those that say too little
 */
export function draftShelf(supplies: readonly Supply[], preferred: readonly string[] = []): DraftShelf {
  const cartons = supplies.filter(({ kind }) => kind === "carton");
  const others = supplies
    .filter(({ kind }) => kind !== "carton")
    .map((supply) => ({ supply, read: describedSupply(description(supply)) }));
  const described = others.flatMap(({ read }) => (read.kind === "described" ? [read.supply] : []));
  const sized = cartons.flatMap(cartonOf);
  const sizedIds = new Set(sized.map(({ supplyId }) => supplyId));
  return {
    supplies: [
      ...described.filter(({ supplyId }) => preferred.includes(supplyId)),
      ...described.filter(({ supplyId }) => !preferred.includes(supplyId)),
    ],
    cartons: sized,
    undescribed: [
      ...others.filter(({ read }) => read.kind === "undescribed").map(({ supply }) => supply),
      ...cartons.filter(({ id }) => !sizedIds.has(id)),
    ],
  };
}

function description(supply: Supply) {
  const { lengthUm, widthUm, useUnit } = supply;
  const byArea = useUnit === "square-foot" || useUnit === "square-metre";
  const sizes = byArea && widthUm === null ? { lengthUm: null, widthUm: lengthUm } : { lengthUm, widthUm };
  return { ...supply, ...sizes, bulkUm: null };
}

function cartonOf(supply: Supply): DraftCarton[] {
  const { id, lengthUm, widthUm, heightUm, massMg } = supply;
  if (lengthUm === null || widthUm === null || heightUm === null) return [];
  return [{ supplyId: id, inside: { lengthUm, widthUm, heightUm }, boardUm: boardUmOf(supply), massMg }];
}
