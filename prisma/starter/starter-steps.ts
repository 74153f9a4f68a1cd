import type { RecipeStep } from "#lib/packing/recipe-version";
import { parseAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";
import { fillShares } from "#prisma/starter/fill-shares";
import { starterCartonId } from "#prisma/starter/starter-cartons";
import type { StarterItem } from "#prisma/starter/starter-item";
import { starterSupply } from "#prisma/starter/starter-supplies";

/** One step of a starter recipe with its exact amount and what a packer would have typed. */
export type StarterStep = Omit<RecipeStep, "id" | "position">;

/**
 * Writes out a starter recipe in the trade's order of work: wraps per piece, base fill, the piece in the
 * middle, sides and top, close.
 *
 * @param item - the item type
 * @param style - what fills the carton: packing paper or large bubble; the wraps are the same
 * @returns the steps in order, amounts in 1/12,000 use unit
 * @throws RangeError if an amount of the list cannot be read
 *
 * Common practice, no source.
 * @example starterSteps(mug, "paper").length; // 8
 */
export function starterSteps(item: StarterItem, style: "paper" | "bubble"): StarterStep[] {
  const fill = style === "paper" ? "packing-paper" : "large-bubble";
  const shares = fillShares(item.voidCubicInches, style);
  return [
    ...item.wraps.map((wrap) => step(wrap.words, wrap.supply, wrap.value, "piece")),
    step("Cushion the base", fill, shares.base, "parcel"),
    step(item.stand, fill, shares.rest, "parcel"),
    step(
      "Close and shake; add fill if it moves; tape both ends",
      "carton-tape",
      `${item.tapeInches} in`,
      "parcel",
    ),
  ];
}

/**
 * Lists every supply that a starter item needs, on paper and on bubble fill, cartons too.
 *
 * @param item - the item type
 * @returns the ids, each once
 * @throws RangeError if an amount of the list cannot be read
 * @example starterSupplyIds(mug).includes("carton-8x8x8"); // true
 */
export function starterSupplyIds(item: StarterItem): string[] {
  const ofSteps = [...starterSteps(item, "paper"), ...starterSteps(item, "bubble")].map(
    (each) => each.supplyId,
  );
  const cartons = item.cartons.map((carton) => starterCartonId(carton.sizes));
  return [...new Set([...ofSteps, ...cartons])];
}

function step(words: string, supplyId: string, typed: string, per: "piece" | "parcel"): StarterStep {
  const unit: UseUnit = starterSupply(supplyId).unit;
  const read = parseAmount(typed, unit, "imperial");
  if (read.kind !== "amount") {
    throw new RangeError(`starterSteps requires amounts that can be read, got ${typed}`);
  }
  return {
    words,
    supplyId,
    amount: read.amount,
    typedValue: read.typedValue,
    typedUnit: read.typedUnit,
    per,
  };
}
