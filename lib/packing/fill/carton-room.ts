import { type Block, blockVolume } from "#lib/packing/block";

/** How a load stands in a carton: as turned, the least clearance that it leaves, and what is left to fill. */
export type CartonRoom = {
  readonly kind: "fits" | "too-tight" | "does-not-fit";
  /** the load as it stands in the carton */
  readonly turned: Block;
  /** clearance on the tightest side; below zero where the load is too large */
  readonly leavesUm: number;
  readonly tightest: "length" | "width" | "height";
  readonly askedUm: number;
  /** inside less the load in millilitres; zero where the load is too large */
  readonly voidMl: number;
};

/** A sum of floats may be a last digit over its block. */
const ROUNDING = 1 + 1e-9;

type Axis = "lengthUm" | "widthUm" | "heightUm";
const FLAT_TURNS: readonly (readonly [Axis, Axis, Axis])[] = [
  ["lengthUm", "widthUm", "heightUm"],
  ["widthUm", "lengthUm", "heightUm"],
];
const ALL_TURNS: readonly (readonly [Axis, Axis, Axis])[] = [
  ...FLAT_TURNS,
  ["lengthUm", "heightUm", "widthUm"],
  ["heightUm", "lengthUm", "widthUm"],
  ["widthUm", "heightUm", "lengthUm"],
  ["heightUm", "widthUm", "lengthUm"],
];

/**
 * The ways to turn a block: all six, or on the spot only where it must stay this side up.
 *
 * @param block - sides in micrometres
 * @param thisSideUp - whether its height must stay its height
 * @returns the turned blocks, the block itself first
 * @example turnedBlocks({ lengthUm: 3, widthUm: 2, heightUm: 1 }, true) // 3 x 2 x 1 and 2 x 3 x 1
 */
export function turnedBlocks(block: Block, thisSideUp: boolean): readonly Block[] {
  return (thisSideUp ? FLAT_TURNS : ALL_TURNS).map(([length, width, height]) => ({
    lengthUm: block[length],
    widthUm: block[width],
    heightUm: block[height],
  }));
}

/**
 * The room that a load leaves in a carton, standing as it is in the middle of it.
 *
 * @param inside - inside of the carton in micrometres
 * @param load - `block` around what is packed, and the millilitres that it takes, at most the block
 * @param askedUm - clearance that is asked for on every side, in micrometres, zero or more
 * @returns an outcome: fits, too tight (with what it leaves), or does not fit (with what is missing, below zero)
 * @throws RangeError if a number is below zero, or the load takes more than its block
 * @see computed from the geometry
 * @example standingRoom(cube12, { block: cube8, ml: blockVolume(cube8) }, 50800).kind // "fits"
 */
export function standingRoom(
  inside: Block,
  load: { readonly block: Block; readonly ml: number },
  askedUm: number,
): CartonRoom {
  if (!(askedUm >= 0)) throw new RangeError(`standingRoom requires a clearance from zero, got ${askedUm}`);
  const insideMl = blockVolume(inside);
  if (!(load.ml >= 0 && load.ml <= blockVolume(load.block) * ROUNDING)) {
    throw new RangeError(`standingRoom requires a load of at most its block, got ${load.ml} ml`);
  }
  const { block } = load;
  const gaps = [
    { tightest: "length", leavesUm: (inside.lengthUm - block.lengthUm) / 2 },
    { tightest: "width", leavesUm: (inside.widthUm - block.widthUm) / 2 },
    { tightest: "height", leavesUm: (inside.heightUm - block.heightUm) / 2 },
  ] as const;
  const { tightest, leavesUm } = gaps.reduce((least, gap) => (gap.leavesUm < least.leavesUm ? gap : least));
  const voidMl = leavesUm < 0 ? 0 : Math.max(0, insideMl - load.ml);
  return { kind: kindOf(leavesUm, askedUm), turned: block, leavesUm, tightest, askedUm, voidMl };
}

/**
 * The room that a load leaves in a carton, turned so that its tightest side leaves most.
 *
 * @param inside - inside of the carton in micrometres
 * @param load - as for `standingRoom`; one that must stay this side up is turned on the spot only
 * @param askedUm - clearance that is asked for on every side, in micrometres, zero or more
 * @returns the outcome of the best turn, the earlier where two leave as much
 * @throws RangeError if a number is below zero, or the load takes more than its block
 * @see computed from the geometry
 * @example cartonRoom(cube12, { block: cube8, ml: blockVolume(cube8), thisSideUp: false }, 50800).kind // "fits"
 */
export function cartonRoom(
  inside: Block,
  load: { readonly block: Block; readonly ml: number; readonly thisSideUp: boolean },
  askedUm: number,
): CartonRoom {
  return turnedBlocks(load.block, load.thisSideUp)
    .map((block) => standingRoom(inside, { block, ml: load.ml }, askedUm))
    .reduce((most, turn) => (turn.leavesUm > most.leavesUm ? turn : most));
}

function kindOf(leavesUm: number, askedUm: number): CartonRoom["kind"] {
  if (leavesUm < 0) return "does-not-fit";
  return leavesUm < askedUm ? "too-tight" : "fits";
}
