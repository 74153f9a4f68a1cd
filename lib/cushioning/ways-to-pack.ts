import type { PackedPieces, WayToPack } from "#lib/cushioning/way-to-pack";
import { billOfMaterials } from "#lib/packing/bill";
import { leadingItemType } from "#lib/packing/leading-item-type";
import { packedMass } from "#lib/packing/packed-mass";
import { CUSHION_STYLES, type CushionStyle, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import type { KnownWeights } from "#lib/packing/weight/known-weights";
import { packedWeight } from "#lib/packing/weight/packed-weight";
import type { ParcelSize } from "#lib/postage/parcel-size";
import { unitsOf } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

/** What a shop's parcels are made up from. */
export type PackingGround = {
  readonly today: Day;
  readonly recipes: readonly RecipeVersion[];
  /** milligrams of a bare piece; null or absent where it was never weighed */
  readonly pieceMasses: ReadonlyMap<string, number | null>;
  /** milligrams of a use unit */
  readonly supplyMasses: ReadonlyMap<string, number | null>;
  readonly weights: KnownWeights;
  /** outside of a packed carton; null where it is not known */
  readonly sizeOf: (cartonId: string) => ParcelSize | null;
};

/**
 * All ways to pack a parcel: a style in which every piece of it has a recipe today, into the carton that the recipe names.
 *
 * @param pieces what is in the parcel
 * @param ground recipes, masses and what was learned of weights
 * @returns in the order of the styles; empty where no style has a recipe for each piece
 * @throws RangeError if the pieces of an item type are not a whole number from 1
 * @example waysToPack([{ itemTypeId: "mug", pieces: 2 }], ground).map(({ style }) => style) // ["paper", "bubble"]
 */
export function waysToPack(pieces: PackedPieces, ground: PackingGround): WayToPack[] {
  return CUSHION_STYLES.flatMap((style) => wayIn(style, pieces, ground) ?? []);
}

function wayIn(style: CushionStyle, pieces: PackedPieces, ground: PackingGround): WayToPack | null {
  const parts = pieces.flatMap((piece) => {
    const recipe = recipeOn(ground.recipes, piece.itemTypeId, style, ground.today);
    return recipe === null ? [] : [{ ...piece, recipe }];
  });
  if (parts.length < pieces.length || parts.length === 0) return null;
  const { lines, cartons, over } = billOfMaterials({ parts });
  const takes = new Map<string, number>();
  const take = (supplyId: string, units: number) => takes.set(supplyId, (takes.get(supplyId) ?? 0) + units);
  for (const { supplyId, amount } of lines) take(supplyId, unitsOf(amount));
  for (const supplyId of cartons) take(supplyId, 1);
  const supplyMasses = ground.supplyMasses;
  const packing = packedMass({ pieces: [], lines, cartons, supplyMasses });
  const weighed = pieces.map((piece) => ({
    ...piece,
    massMg: ground.pieceMasses.get(piece.itemTypeId) ?? null,
  }));
  const contents = packedMass({ pieces: weighed, lines: [], cartons: [], supplyMasses });
  const unweighed = [...contents.unknown, ...packing.unknown];
  const [outer] = cartons;
  const predictedMg = contents.mg + packing.mg;
  const isWhole = unweighed.length === 0 && outer !== undefined && predictedMg > 0;
  const group = { itemTypeId: leadingItemType(pieces), cartonId: outer ?? null, style };
  return {
    style,
    takes,
    cartons,
    isOverfull: over,
    size: outer === undefined ? null : ground.sizeOf(outer),
    weight: isWhole ? packedWeight(ground.weights, { ...group, predictedMg }) : null,
    packingMg: packing.mg,
    contentsMg: contents.mg,
    unweighed,
  };
}
