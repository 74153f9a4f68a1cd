import { billOfMaterials } from "#lib/packing/bill";
import { type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { DemoParcel } from "#prisma/demo/demo-parcels";
import type { ParcelBody } from "#prisma/records/parcel-body";

/** One usual parcel of a bowl in so many goes together with a mug. */
const ONE_BOWL_IN = 16;
/** One usual parcel of mugs in so many gets a second carton round it. */
const ONE_DOUBLE_IN = 40;

/** A bowl below and a mug above it. */
const BOWL_AND_MUG = "carton-12x12x14";
/** Which carton goes round which, with two inches or so to fill between them. */
const OUTER: Readonly<Record<string, string>> = {
  "carton-8x8x8": "carton-12x12x14",
  "carton-12x9x8": "carton-16x12x12",
};
const SHEETS_BETWEEN = 8;

/**
 * Makes a few of the demo shop's parcels fuller: a bowl and a mug in one carton, and mugs in a carton within a
 * carton. Which ones follows from their place among their like, so no chance moves.
 *
 * @param parcels - the parcels in the order in which they were packed, not weighed yet
 * @param recipes - every recipe version of the shop
 * @returns as many parcels, in the same order
 * @throws RangeError if a bowl or a mug has no recipe
 *
 * Common practice, no source: a second carton round fragile goods, cushioned on all sides.
 * @example fullerParcels(demoParcels(random, calendar, recipes), recipes);
 */
export function fullerParcels(
  parcels: readonly DemoParcel[],
  recipes: readonly RecipeVersion[],
): DemoParcel[] {
  const bowls = oneIn(ONE_BOWL_IN, parcels.filter(isOnlyBowl));
  const doubles = oneIn(ONE_DOUBLE_IN, parcels.filter(fitsInto));
  return parcels.map((parcel) => {
    if (bowls.has(parcel)) return { ...parcel, body: withMug(parcel.body, recipes) };
    return doubles.has(parcel) ? { ...parcel, body: doubleBoxed(parcel.body) } : parcel;
  });
}

function oneIn(count: number, parcels: readonly DemoParcel[]): ReadonlySet<DemoParcel> {
  return new Set(parcels.filter((_, index) => index % count === count - 1));
}

function isOnlyBowl({ body, fate }: DemoParcel): boolean {
  return fate === "usual" && body.style === "paper" && body.pieces[0]?.itemTypeId === "bowl";
}

function fitsInto({ body, fate }: DemoParcel): boolean {
  const [only, ...others] = body.cartons;
  const isWhole = only?.cutTyped === undefined && others.length === 0;
  return fate === "usual" && body.style === "paper" && isWhole && (only?.supplyId ?? "") in OUTER;
}

function withMug(body: ParcelBody, recipes: readonly RecipeVersion[]): ParcelBody {
  const parts = ["bowl", "mug"].map((itemTypeId) => {
    const recipe = recipeOn(recipes, itemTypeId, body.style, day(body.packedOn));
    if (recipe === null) throw new RangeError(`fullerParcels requires a recipe of ${itemTypeId}, got none`);
    return { itemTypeId, pieces: 1, recipe };
  });
  const { lines } = billOfMaterials({ parts, cartons: [BOWL_AND_MUG] });
  const pieces = parts.map(({ itemTypeId, pieces: count }) => ({ itemTypeId, pieces: count }));
  return { ...body, pieces, lines, cartons: [{ supplyId: BOWL_AND_MUG }] };
}

/** The carton as it was packed stands inside another: paper between them, and the other is taped too. */
function doubleBoxed(body: ParcelBody): ParcelBody {
  const [inner] = body.cartons;
  const outer = OUTER[inner?.supplyId ?? ""];
  if (inner === undefined || outer === undefined) return body;
  const between = {
    supplyId: "packing-paper",
    amount: amount(SHEETS_BETWEEN * AMOUNT_PER_UNIT),
    recipeStepId: null,
    typedValue: String(SHEETS_BETWEEN),
    typedUnit: "sheet",
    words: "Fill between the two cartons",
  };
  const tape = body.lines
    .filter((line) => line.supplyId === "carton-tape")
    .map((line) => ({ ...line, recipeStepId: null, words: "Tape the outer carton" }));
  return { ...body, cartons: [{ supplyId: outer }, inner], lines: [...body.lines, between, ...tape] };
}
