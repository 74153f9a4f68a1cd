import { type TapeLegs, type TapePattern, USUAL_LEGS } from "#lib/packing/carton-tape";
import type { Material } from "#lib/packing/material";
import type { Frailty } from "#lib/packing/piece/piece";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** Whether fill is stuffed in or laid in. */
export type FillManner = "firm" | "loose";

/** How a shop packs. A plain value: a shop keeps its own copy and changes what it does otherwise. */
export type Habits = {
  /** layers of a material round a piece */
  readonly layers: Readonly<Partial<Record<Material, number>>>;
  /** layers of a guard, and of the outer wrap */
  readonly guardLayers: number;
  readonly outerLayers: number;
  /** how far a wrap laps over itself, and what it sticks out beyond the folded ends, both ends together */
  readonly overlapUm: number;
  readonly endMarginUm: number;
  /** width of the ring round a rim, folded over it */
  readonly rimWidthUm: number;
  /** cushion between the wrapped piece and the carton, all round */
  readonly cushionUm: Readonly<Record<Frailty, number>>;
  /** from this mass on a piece gets the cushion of a thin one */
  readonly heavyFromMg: number;
  /** gap between an inner and an outer carton, all round */
  readonly boxGapUm: number;
  /** share of a hollow that is filled, and how */
  readonly hollowShare: number;
  readonly hollowManner: FillManner;
  /** sheets of tissue that a hollow takes at most; a larger one is filled with the fill for the carton */
  readonly hollowTissue: number;
  readonly fillManner: FillManner;
  /** volume that a material fills by its flat area: how thick it lies when crumpled, in micrometres */
  readonly bulkUm: Readonly<Record<FillManner, Readonly<Partial<Record<Material, number>>>>>;
  /** loose fill above the void, so that the flaps hold it */
  readonly looseOverfill: number;
  readonly strips: { readonly perWrap: number; readonly perGuard: number; readonly lengthUm: number };
  readonly closing: TapePattern;
  readonly legs: TapeLegs;
  /** tape used over tape in theory */
  readonly tapeFactor: number;
  readonly boardPoundsPerSquareFoot: number;
  /** letter, slip and leaflet */
  readonly papersMg: number;
};

const inches = (count: number): number => count * MICROMETRES_PER_INCH;
/** Bulk of crumpled stock by the square inch of flat sheet, from cubic inches to a 24 x 36 in sheet. */
const paperBulk = (cubicInches: number): number => inches(cubicInches / (24 * 36));
/** Other paper as packing paper of 30 lb (48.8 g/m²), by its grammage: crumpled paper goes by its mass. */
const FIRM = paperBulk(52);
const LOOSE = paperBulk(86);
const TISSUE_SHARE = 17 / 48.8;
const KRAFT_SHARE = 70 / 48.8;
const LARGE_BUBBLE_BULK = inches(65 / 144);
/** Two to three layers of small bubble stand in for one of large. */
const SMALL_BUBBLE_BULK = LARGE_BUBBLE_BULK / 2.5;

/** The habits that a new shop begins with. Every one is a guess until the shop has measured; sources below. */
export const USUAL_HABITS: Habits = {
  layers: { tissue: 1, "packing-paper": 3, kraft: 1, "small-bubble": 2, "large-bubble": 2, foam: 2, card: 1 },
  guardLayers: 1,
  outerLayers: 1,
  overlapUm: inches(2),
  endMarginUm: inches(1),
  rimWidthUm: inches(3),
  cushionUm: { sturdy: inches(1), usual: inches(2), thin: inches(3) },
  heavyFromMg: 2_000_000,
  boxGapUm: inches(1),
  hollowShare: 0.6,
  hollowManner: "loose",
  hollowTissue: 2,
  fillManner: "firm",
  bulkUm: {
    firm: {
      tissue: FIRM * TISSUE_SHARE,
      "packing-paper": FIRM,
      kraft: FIRM * KRAFT_SHARE,
      "gift-wrap": FIRM * KRAFT_SHARE,
      "small-bubble": SMALL_BUBBLE_BULK,
      "large-bubble": LARGE_BUBBLE_BULK,
    },
    loose: {
      tissue: LOOSE * TISSUE_SHARE,
      "packing-paper": LOOSE,
      kraft: LOOSE * KRAFT_SHARE,
      "gift-wrap": LOOSE * KRAFT_SHARE,
      "small-bubble": SMALL_BUBBLE_BULK,
      "large-bubble": LARGE_BUBBLE_BULK,
    },
  },
  looseOverfill: 1.1,
  strips: { perWrap: 3, perGuard: 1, lengthUm: inches(3) },
  closing: "h",
  legs: USUAL_LEGS,
  tapeFactor: 1,
  boardPoundsPerSquareFoot: 0.115,
  papersMg: 10_000,
};

const PRACTICE = "common practice, no source";

/** Where each of the usual habits comes from, as it is told to the seller. */
export const HABIT_SOURCES: Readonly<Record<keyof Habits, string>> = {
  layers: `two to three turns of bubble: ${PRACTICE}`,
  guardLayers: PRACTICE,
  outerLayers: PRACTICE,
  overlapUm: PRACTICE,
  endMarginUm: PRACTICE,
  rimWidthUm: PRACTICE,
  cushionUm:
    "sellers, collectors and postal pages ask for 1 to 3 in; 2 in, 3 in for heavy or thin pieces, 1 in for sturdy ones are the middle: common practice",
  heavyFromMg: `2 kg, from where double wall is usual: ${PRACTICE}`,
  boxGapUm: "1 in between two cartons: a national post's packing page (2013)",
  hollowShare: PRACTICE,
  hollowManner: "loosely, never rammed: common practice, no source",
  hollowTissue: `a bowl or vase is filled with paper, a mug or glass with tissue: ${PRACTICE}`,
  fillManner: PRACTICE,
  bulkUm:
    "52 cu in firm and 86 loose to a 24 x 36 in sheet of 30 lb paper, 65 to a square foot of large bubble: from memory; count what fills one empty carton",
  looseOverfill: "a little over, so that the flaps hold it: from memory",
  strips: PRACTICE,
  closing: "a strip on the seam and on both edges, above and below: described in an encyclopedia",
  legs: "2.75 in: a tape supplier's page; 2 in at the edges: common practice, no source",
  tapeFactor: "as in theory; movers use several times as much, so learn it from rolls that were finished",
  boardPoundsPerSquareFoot: "single wall, from memory; weigh one carton",
  papersMg: PRACTICE,
};
