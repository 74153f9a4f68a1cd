import type { CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { OfferedCarton, PackedLoad } from "#lib/cartons/cost/packed-load";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { RangeLoad, RangeTerms } from "#lib/cartons/range/cost-table";
import { blockAround, blockVolume } from "#lib/packing/block";
import { USUAL_LEGS } from "#lib/packing/carton-tape";
import { giftwareRows } from "../forecast/giftware-ledger";
import { type Dice, dice } from "../purchasing/dice";

// Which kinds and how many pieces each parcel held is real (see giftware-ledger.ts). All sizes, masses, prices and rates
// here are INVENTED, drawn by a seed: the file of parcels has none.

const INCH_UM = 25_400;
const ML_PER_CUBIC_INCH = 16.387064;
const VALUE_PER_MINOR = 10_000;

/** Invented: least and most length, width and height of a kind in tenths of an inch, bare. */
// biome-ignore format: a table
const KINDS: Readonly<Record<string, readonly [low: Tenths, high: Tenths]>> = {
  bowl: [[50, 50, 20], [100, 100, 45]],
  "cake-stand": [[70, 70, 40], [100, 100, 70]],
  "chandelier-or-lamp": [[50, 50, 70], [80, 80, 110]],
  "cup-and-saucer": [[55, 55, 25], [65, 65, 35]],
  "glass-candle-holder": [[25, 25, 25], [45, 45, 90]],
  "jar-or-bottle": [[30, 30, 45], [50, 50, 90]],
  "money-box-or-figurine": [[30, 30, 40], [60, 50, 80]],
  mug: [[45, 33, 35], [52, 38, 45]],
  "ornament-or-bauble": [[20, 20, 20], [40, 40, 50]],
  "picture-frame": [[50, 10, 60], [90, 12, 110]],
  plate: [[70, 70, 8], [115, 115, 14]],
  teapot: [[80, 55, 55], [100, 70, 75]],
  "vase-or-jug": [[35, 35, 60], [65, 65, 120]],
  "wall-clock": [[60, 60, 15], [100, 100, 20]],
};

type Tenths = readonly [number, number, number];

/** Invented: each kind comes as so many products. */
const PRODUCTS = 3;
/** Invented: half an inch of bubble on every side, and 8 g for each cubic inch of the bare block. */
const WRAP_UM = INCH_UM / 2;
const MG_PER_CUBIC_INCH = 8_000;

type Product = { readonly piece: WrappedPiece; readonly massMg: number };

/**
 * The parcels of the file as loads, with invented products of a seed; or more parcels drawn from them.
 *
 * @param seed of the products and of which product a parcel held
 * @param count parcels, the first of the file, or drawn from all where there are more; null for all of the file
 * @returns loads, each for one parcel
 */
export function giftwareLoads(seed: number, count: number | null): RangeLoad[] {
  const chance = dice(seed);
  const products = new Map(
    Object.entries(KINDS).map(([kind, span]) => [
      kind,
      Array.from({ length: PRODUCTS }, () => product(span, chance)),
    ]),
  );
  const orders = new Map<string, { type: string; pieces: number }[]>();
  for (const row of giftwareRows()) orders.set(row.order, [...(orders.get(row.order) ?? []), row]);
  const all = [...orders.values()];
  const wanted = count === null || count <= all.length ? all.slice(0, count ?? all.length) : null;
  const drawn = wanted ?? Array.from({ length: count ?? 0 }, () => chance.pick(all));
  return drawn.map((lines) => ({ load: loadOf(lines, products, chance), parcels: 1 }));
}

function product([low, high]: readonly [Tenths, Tenths], chance: Dice): Product {
  const side = (at: 0 | 1 | 2) => (chance.whole(low[at], high[at]) * INCH_UM) / 10;
  const bare = { lengthUm: side(0), widthUm: side(1), heightUm: side(2) };
  const massMg = Math.round((blockVolume(bare) / ML_PER_CUBIC_INCH) * MG_PER_CUBIC_INCH);
  return { piece: { block: blockAround(bare, WRAP_UM), upright: false }, massMg };
}

function loadOf(
  lines: readonly { type: string; pieces: number }[],
  products: ReadonlyMap<string, readonly Product[]>,
  chance: Dice,
): PackedLoad {
  const held = lines.flatMap(({ type, pieces }) => {
    const one = chance.pick(products.get(type) ?? []);
    return Array.from({ length: pieces }, () => one);
  });
  return {
    pieces: held.map(({ piece }) => piece),
    ml: held.reduce((sum, { piece }) => sum + blockVolume(piece.block), 0),
    massMg: held.reduce((sum, { massMg }) => sum + massMg, 0),
  };
}

/** Cubes of 6 to 16 in, and common oblongs; inside sizes in inches. */
const CUBES = [6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16];
// biome-ignore format: a table
const OBLONGS: readonly (readonly [number, number, number])[] = [
  [8, 6, 4], [9, 6, 4], [10, 8, 6], [12, 6, 6], [12, 9, 4], [12, 9, 6], [12, 10, 8],
  [12, 12, 6], [14, 10, 6], [14, 12, 8], [16, 12, 8], [16, 12, 10], [18, 12, 8], [18, 14, 12],
];

/** 25 sizes that could be stocked. Prices are invented: 25 cents, and a dollar for each 1,500 sq in of wall. */
export const RANGE_CANDIDATES: readonly OfferedCarton[] = [
  ...CUBES.map((side) => offered([side, side, side])),
  ...OBLONGS.map(offered),
];

/** Places of all cubes among the candidates. */
export const CUBE_SIZES: readonly number[] = [...CUBES.keys()];

/** Today's ladder, invented: the even cubes, 6 to 16 in. */
export const TODAYS_LADDER: readonly number[] = CUBES.flatMap((side, at) => (side % 2 === 0 ? [at] : []));

function offered([length, width, height]: readonly [number, number, number]): OfferedCarton {
  const wall = 2 * (length * width + length * height + width * height);
  return {
    id: `${length} × ${width} × ${height} in`,
    inside: { lengthUm: length * INCH_UM, widthUm: width * INCH_UM, heightUm: height * INCH_UM },
    boardUm: 4_000,
    massMg: wall * 400,
    value: Math.round((25 + wall / 15) * VALUE_PER_MINOR),
  };
}

/** Invented terms: packing paper, H tape, and postage by each pound begun of mass or of 166 cubic inches. */
const COSTS: CartonTerms = {
  fill: { mlPerUnit: 52 * ML_PER_CUBIC_INCH, massMg: 27_200, value: 7 * VALUE_PER_MINOR },
  tape: { pattern: "h", legs: USUAL_LEGS, factor: 1.2, massMgPerUm: 2.3e-3, valuePerUm: 0.5 },
  bulgeUm: 0,
  postage: (massMg, { um: [first, second, third] }) => {
    const cubicInches = (first * second * third) / INCH_UM ** 3;
    const pounds = Math.max(massMg / 453_592.37, cubicInches > 1_728 ? cubicInches / 166 : 0);
    return 450 + 70 * Math.ceil(pounds);
  },
};

/** How parcels are packed here: half an inch to each wall, base and top. A parcel that fits nothing counts 300.00. */
export const RANGE_TERMS: RangeTerms = {
  ...COSTS,
  clearance: { wallsUm: INCH_UM / 2, baseUm: INCH_UM / 2, topUm: INCH_UM / 2 },
  effort: QUICK_EFFORT,
  unpackedValue: 30_000 * VALUE_PER_MINOR,
};
