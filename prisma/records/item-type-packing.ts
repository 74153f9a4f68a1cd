import { CUSHION_STYLES, type CushionStyle, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { type RecipeTakes, recipeTakes, type UsualPacking, usualBill } from "#lib/packing/usual-bill";
import { addDays, type Day } from "#lib/units/day";
import type { ForecastRows, PackedRow } from "./forecast-rows";

/** How an item type is packed lately, and what that takes. */
export type ItemTypePacking = UsualPacking & {
  /** whether it was ever packed or has a recipe */
  readonly isKnown: boolean;
  /** styles that it is packed in lately */
  readonly styles: ReadonlySet<string>;
  /** use units a piece, by supply */
  readonly bill: ReadonlyMap<string, number>;
  /** sum and sum of squares of what its parcels take of a supply, over its parcels lately */
  readonly momentsOf: (supplyId: string) => { readonly sum: number; readonly squares: number };
};

/** Styles are taken from so many days with parcels back; older ones only where there are none. */
const DAYS_OF_STYLES = 56;
const DAYS_OF_CARTONS = 364;
/** A style with less of the pieces was an exception. */
const LEAST_SHARE = 0.05;

/**
 * How an item type is packed lately: styles of the last 8 weeks with parcels, cartons of the last year; where nothing
 * was packed yet, the shop's usual style with its smallest carton, a piece a parcel.
 *
 * @param rows what the forecast is made from
 * @param typeId item type
 * @param until the first day that no longer counts
 * @param style as if it were packed in this style from now on
 */
export function itemTypePacking(
  rows: ForecastRows,
  typeId: string,
  until: Day,
  style: CushionStyle | null = null,
): ItemTypePacking {
  const own = rows.packed.filter((row) => row.itemTypeId === typeId);
  const nowOf = (each: CushionStyle): RecipeVersion | null => recipeOn(rows.recipes, typeId, each, until);
  const lastDay = own.at(-1)?.day;
  const lately = lastDay === undefined ? [] : since(own, addDays(lastDay, -DAYS_OF_STYLES));
  const recipes =
    style === null || nowOf(style) === null
      ? usualRecipes(lately, nowOf, rows.shop.defaultStyle)
      : usualRecipes([], nowOf, style);
  const year = since(own, addDays(until, -DAYS_OF_CARTONS));
  const counts = year.length > 0 ? year : own;
  const pieces = total(counts, (row) => row.pieces);
  const parcelsPerPiece = pieces > 0 ? total(counts, (row) => row.parcels) / pieces : 1;
  const cartons = pieces > 0 ? usualCartons(counts) : firstCarton(recipes.map(({ recipe }) => recipe));
  const packing: UsualPacking = {
    recipes: recipes.map(({ takes, share }) => ({ takes, share })),
    cartons,
    parcelsPerPiece,
  };
  return {
    ...packing,
    isKnown: own.length > 0 || recipes.length > 0,
    styles: new Set(recipes.map((recipe) => recipe.style)),
    bill: usualBill(packing),
    momentsOf: (supplyId) =>
      moments(supplyId, packing, { rows, typeId, parcels: total(counts, (row) => row.parcels) }),
  };
}

type StyleShare = {
  readonly style: CushionStyle;
  readonly recipe: RecipeVersion;
  readonly takes: RecipeTakes;
  readonly share: number;
};

function usualRecipes(
  lately: readonly PackedRow[],
  nowOf: (style: CushionStyle) => RecipeVersion | null,
  defaultStyle: string,
): StyleShare[] {
  const known = CUSHION_STYLES.flatMap((style) => {
    const recipe = nowOf(style);
    const pieces = total(
      lately.filter((row) => row.style === style),
      (row) => row.pieces,
    );
    return recipe === null ? [] : [{ style, recipe, takes: recipeTakes(recipe), pieces }];
  });
  const all = total(known, ({ pieces }) => pieces);
  const used = known.filter(({ pieces }) => all > 0 && pieces / all >= LEAST_SHARE);
  const [fallback = known[0]] = known.filter(({ style }) => style === defaultStyle);
  const taken = used.length > 0 ? used : [fallback].filter((each) => each !== undefined);
  const sum = total(taken, ({ pieces }) => pieces);
  return taken.map((each) => ({ ...each, share: sum > 0 ? each.pieces / sum : 1 / taken.length }));
}

function usualCartons(rows: readonly PackedRow[]): UsualPacking["cartons"] {
  const parcels = new Map<string, number>();
  for (const row of rows) parcels.set(row.cartonId, (parcels.get(row.cartonId) ?? 0) + row.parcels);
  const all = [...parcels.values()].reduce((sum, each) => sum + each, 0);
  return [...parcels].flatMap(([supplyId, count]) =>
    supplyId === "" || count <= 0 ? [] : [{ supplyId, share: count / all }],
  );
}

function firstCarton(recipes: readonly RecipeVersion[]): UsualPacking["cartons"] {
  const [smallest] = recipes.flatMap((recipe) => recipe.cartons).toSorted((a, b) => a.upTo - b.upTo);
  return smallest === undefined ? [] : [{ supplyId: smallest.supplyId, share: 1 }];
}

function moments(
  supplyId: string,
  { recipes, cartons }: UsualPacking,
  of: { readonly rows: ForecastRows; readonly typeId: string; readonly parcels: number },
): { readonly sum: number; readonly squares: number } {
  const sizes = of.rows.sizes.get(of.typeId);
  const mean = sizes === undefined || sizes.times === 0 ? 1 : sizes.pieces / sizes.times;
  const square = sizes === undefined || sizes.times === 0 ? 1 : sizes.squares / sizes.times;
  let sum = 0;
  let squares = 0;
  for (const { takes, share } of recipes) {
    const piece = takes.perPiece.get(supplyId) ?? 0;
    const parcel = takes.perParcel.get(supplyId) ?? 0;
    sum += share * (piece * mean + parcel);
    squares += share * (piece * piece * square + 2 * piece * parcel * mean + parcel * parcel);
  }
  for (const carton of cartons.filter((each) => each.supplyId === supplyId)) {
    sum += carton.share;
    squares += carton.share;
  }
  return { sum: of.parcels * sum, squares: of.parcels * squares };
}

function since(rows: readonly PackedRow[], from: Day): PackedRow[] {
  return rows.filter((row) => row.day >= from);
}

function total<T>(rows: readonly T[], of: (row: T) => number): number {
  return rows.reduce((sum, row) => sum + of(row), 0);
}
