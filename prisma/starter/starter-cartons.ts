import type { StarterSupply } from "#prisma/starter/starter-supply";

/** Inside sizes in inches of the cartons that the starter recipes name. */
const SIZES: readonly (readonly [number, number, number])[] = [
  [4, 4, 4],
  [6, 6, 6],
  [8, 8, 8],
  [8, 8, 12],
  [8, 8, 14],
  [12, 8, 8],
  [12, 8, 12],
  [12, 9, 8],
  [12, 10, 10],
  [12, 12, 4],
  [12, 12, 8],
  [12, 12, 14],
  [14, 14, 10],
  [16, 12, 12],
  [18, 12, 4],
];

/** Single wall board, milligrams a square foot (0.115 lb; common practice, no source). */
const BOARD_MG_PER_SQUARE_FOOT = 52_163;

/**
 * Guesses what an empty carton weighs from the board that it is cut from.
 *
 * @param length - inside length, inches
 * @param width - inside width, inches
 * @param height - inside height, inches
 * @returns the mass in milligrams, to the nearest gram
 *
 * Blank of a carton with flaps that meet: (2L + 2W + 2) × (W + H) square inches. Common practice, no source.
 * @example cartonMassMg(8, 8, 8); // 197_000
 */
export function cartonMassMg(length: number, width: number, height: number): number {
  const blankSquareInches = (2 * length + 2 * width + 2) * (width + height);
  const grams = (blankSquareInches / 144) * (BOARD_MG_PER_SQUARE_FOOT / 1000);
  return Math.round(grams) * 1000;
}

/**
 * Names the carton of some inside sizes.
 *
 * @param sizes - inside sizes in inches with crosses between: "8x8x12"
 * @returns the supply's id
 * @example starterCartonId("8x8x12"); // "carton-8x8x12"
 */
export function starterCartonId(sizes: string): string {
  return `carton-${sizes}`;
}

/** The cartons of the starter recipes, single wall. */
export const STARTER_CARTONS: readonly StarterSupply[] = SIZES.map(([length, width, height]) => ({
  id: starterCartonId(`${length}x${width}x${height}`),
  name: `Carton ${length} × ${width} × ${height}`,
  kind: "carton",
  unit: "each",
  massMg: cartonMassMg(length, width, height),
  inches: [length, width, height],
  note: "Single wall. The mass is worked out from the board that its blank takes.",
}));
