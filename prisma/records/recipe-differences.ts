import { type CushionStyle, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { recipeTakes } from "#lib/packing/usual-bill";
import type { Day } from "#lib/units/day";
import type { ForecastRows, PackedRow } from "./forecast-rows";
import type { ItemTypePacking } from "./item-type-packing";

/** Which weeks differences are added up over. */
export type DifferenceFrame = {
  readonly today: Day;
  readonly weeks: number;
  readonly weekOf: (of: Day) => number | null;
};

/**
 * What the parcels of each week would have taken more, or less, by today's recipes: where the recipe has a newer version
 * since, or the item type is no longer packed in that style. A carton that the newer version no longer lists is
 * replaced by the one that it lists for as many pieces. What went into an item type that is out of use counts as not
 * used.
 *
 * @param rows what the forecast is made from
 * @param packings how each item type in use is packed lately
 * @param frame the weeks
 * @returns by supply, use units a week; a supply without a difference is not in it
 */
export function recipeDifferences(
  rows: ForecastRows,
  packings: ReadonlyMap<string, ItemTypePacking>,
  { today, weeks, weekOf }: DifferenceFrame,
): Map<string, number[]> {
  const differences = new Map<string, number[]>();
  const versionOn = versionFinder(rows.recipes);
  for (const row of rows.packed) {
    const week = weekOf(row.day);
    const then = versionOn(row, row.day);
    const now = versionOn(row, today);
    if (week === null || then === null || now === null) continue;
    addDifference(
      (supplyId, units) => {
        const list = differences.get(supplyId) ?? new Array<number>(weeks).fill(0);
        list[week] = (list[week] ?? 0) + units;
        differences.set(supplyId, list);
      },
      { row, then, now, packing: packings.get(row.itemTypeId) },
    );
  }
  return differences;
}

type Packed = {
  readonly row: PackedRow;
  readonly then: RecipeVersion;
  readonly now: RecipeVersion;
  /** undefined where the item type is out of use */
  readonly packing: ItemTypePacking | undefined;
};

function addDifference(add: Add, { row, then, now, packing }: Packed): void {
  if (packing === undefined) {
    addTakes(add, recipeTakes(then), row, -1);
    if (row.cartonId !== "" && row.parcels > 0) add(row.cartonId, -row.parcels);
    return;
  }
  const isStyleKept = packing.styles.size === 0 || packing.styles.has(row.style);
  if (isStyleKept && then.id === now.id) return;
  addTakes(add, recipeTakes(then), row, -1);
  const instead = isStyleKept ? [{ takes: recipeTakes(now), share: 1 }] : packing.recipes;
  for (const { takes, share } of instead) addTakes(add, takes, row, share);
  moveCarton(add, row, then, now);
}

type Add = (supplyId: string, units: number) => void;

function addTakes(
  add: Add,
  takes: ReturnType<typeof recipeTakes>,
  { pieces, parcels }: PackedRow,
  share: number,
): void {
  for (const [supplyId, units] of takes.perPiece) add(supplyId, share * pieces * units);
  for (const [supplyId, units] of takes.perParcel) add(supplyId, share * parcels * units);
}

function moveCarton(add: Add, row: PackedRow, then: RecipeVersion, now: RecipeVersion): void {
  const lists = (recipe: RecipeVersion): boolean =>
    recipe.cartons.some((carton) => carton.supplyId === row.cartonId);
  if (row.parcels === 0 || !lists(then) || lists(now)) return;
  const perParcel = row.pieces / row.parcels;
  const sorted = now.cartons.toSorted((a, b) => a.upTo - b.upTo);
  const instead = sorted.find(({ upTo }) => upTo >= perParcel) ?? sorted.at(-1);
  if (instead === undefined) return;
  add(row.cartonId, -row.parcels);
  add(instead.supplyId, row.parcels);
}

/** `recipeOn` with the versions of each item type and style looked up once. */
function versionFinder(recipes: readonly RecipeVersion[]): (row: PackedRow, on: Day) => RecipeVersion | null {
  const versions = new Map<string, RecipeVersion[]>();
  for (const recipe of recipes) {
    const key = `${recipe.itemTypeId} ${recipe.style}`;
    versions.set(key, [...(versions.get(key) ?? []), recipe]);
  }
  return ({ itemTypeId, style }, on) => {
    const own = versions.get(`${itemTypeId} ${style}`) ?? [];
    return own.length === 1 ? (own[0] ?? null) : recipeOn(own, itemTypeId, style as CushionStyle, on);
  };
}
