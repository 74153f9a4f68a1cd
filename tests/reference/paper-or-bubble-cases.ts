import type { CushionStyle } from "#lib/packing/recipe-version";

// Two item types of the demo shop, worked with a pocket calculator.
// Amounts and masses: the recipe table of the trade, common practice, no source. Prices, zones, rate card: the demo's,
// invented. Spread of the weight with no parcel weighed yet: nine in ten within a tenth of it, at least 50 g, about the
// bill: common practice, no source; 90 % of a normal distribution lie below 1.2816 deviations.
// Chances: table of the normal distribution, www.math.com/tables/stat/distributions/z-dist.htm, to four digits, evenly
// between two rows. 1 lb = 453.592 g.

/** A way to pack an item type, line by line. */
type Worked = {
  readonly itemTypeId: string;
  readonly style: CushionStyle;
  /** supply, use units, cents */
  readonly lines: readonly (readonly [string, number, number])[];
  readonly materials: number;
  readonly grams: number;
  /** chance of each step in pounds */
  readonly chances: Readonly<Record<number, number>>;
  /** cents to each zone, and over 5 : 4 : 1 */
  readonly near: number;
  readonly far: number;
  readonly abroad: number;
  readonly postage: number;
  readonly total: number;
};

// Cents a unit: tissue 1,750 / 480 = 3.6458; packing paper 3,150 / 416 = 7.5721; small bubble 2,650 / 186 = 14.2473; large
// bubble 3,150 / 125 = 25.2; household tape 1,150 / 2,592 = 0.4437; carton tape 1,850 / 1,980 = 0.9343; cartons 2,500 / 25 =
// 100 (12 x 12 x 4 in) and 3,000 / 25 = 120 (8 x 8 x 14 in).
// Postage: near 590 + 85 a pound begun, far 690 + 160, abroad 1,490 + 520; over 5 : 4 : 1 that is 720 + 158.5.
export const WORKED: readonly Worked[] = [
  {
    // Fill: 326 cubic inches / 52 = 6 sheets. 900 + 6.6 + 4 x 4.6 + 2 x 7.9 + 4 x 0.07 + 6 x 27.2 + 8.25 x 0.701 + 290 g
    itemTypeId: "framed-tile",
    style: "paper",
    lines: [
      ["tissue", 1, 3.65],
      ["small-bubble", 4, 56.99],
      ["large-bubble", 2, 50.4],
      ["household-tape", 4, 1.77],
      ["packing-paper", 6, 45.43],
      ["carton-tape", 8.25, 7.71],
      ["carton-12x12x4", 1, 100],
    ],
    materials: 265.95,
    grams: 1_400.063,
    // Deviation 140.006 / 1.2816 = 109.25 g. 3 lb = 1,360.78 g: z = -0.3596, table 1 - (0.6368 + 0.96 x 0.0038) = 0.3596.
    // 4 lb: z = 3.79, table 0.9999. 2 lb: z = -4.51, next to nothing. On average 4 - 0.3596 + 0.0001 = 3.6405 lb.
    chances: { 2: 0, 3: 0.3596, 4: 0.6403 },
    near: 590 + 85 * 3.6405,
    far: 690 + 160 * 3.6405,
    abroad: 1_490 + 520 * 3.6405,
    postage: 1_297.02,
    total: 1_562.97,
  },
  {
    // Fill: 326 / 65 = 5.02 sq ft beside the 2 of the pads, 7.02 x 7.9 = 55.458 g; no packing paper
    itemTypeId: "framed-tile",
    style: "bubble",
    lines: [
      ["tissue", 1, 3.65],
      ["small-bubble", 4, 56.99],
      ["large-bubble", 7.02, 176.9],
      ["household-tape", 4, 1.77],
      ["carton-tape", 8.25, 7.71],
      ["carton-12x12x4", 1, 100],
    ],
    materials: 347.02,
    grams: 1_276.521,
    // Deviation 127.652 / 1.2816 = 99.61 g. 3 lb: z = 0.8459, table 0.7995 + 0.59 x 0.0028 = 0.8012. 2 lb: z = -3.71, table
    // 0.0001. On average 4 - 0.8012 - 0.0001 = 3.1987 lb.
    chances: { 2: 0.0001, 3: 0.8011, 4: 0.1988 },
    near: 590 + 85 * 3.1987,
    far: 690 + 160 * 3.1987,
    abroad: 1_490 + 520 * 3.1987,
    postage: 1_226.99,
    total: 1_574.02,
  },
  {
    // Fill: 609 / 52 = 12 sheets and one inside. 150 + 6.6 + 5 x 4.6 + 3 x 0.07 + 13 x 27.2 + 6.25 x 0.701 + 271 g
    itemTypeId: "lamp-chimney",
    style: "paper",
    lines: [
      ["tissue", 1, 3.65],
      ["small-bubble", 5, 71.24],
      ["household-tape", 3, 1.33],
      ["packing-paper", 13, 98.44],
      ["carton-tape", 6.25, 5.84],
      ["carton-8x8x14", 1, 120],
    ],
    materials: 300.49,
    grams: 808.791,
    // Deviation 80.879 / 1.2816 = 63.11 g. 2 lb = 907.18 g: z = 1.559, table 0.9394 + 0.9 x 0.0012 = 0.9405; 1 lb: z = -5.6.
    // On average 3 - 0.9405 = 2.0595 lb.
    chances: { 1: 0, 2: 0.9405, 3: 0.0595 },
    near: 590 + 85 * 2.0595,
    far: 690 + 160 * 2.0595,
    abroad: 1_490 + 520 * 2.0595,
    postage: 1_046.43,
    total: 1_346.92,
  },
  {
    // Fill: 609 / 65 = 9.37 sq ft, 74.023 g; the sheet inside stays, 27.2 g
    itemTypeId: "lamp-chimney",
    style: "bubble",
    lines: [
      ["tissue", 1, 3.65],
      ["small-bubble", 5, 71.24],
      ["large-bubble", 9.37, 236.12],
      ["household-tape", 3, 1.33],
      ["packing-paper", 1, 7.57],
      ["carton-tape", 6.25, 5.84],
      ["carton-8x8x14", 1, 120],
    ],
    materials: 445.75,
    grams: 556.414,
    // Deviation 55.641 / 1.2816 = 43.42 g. 1 lb: z = -2.368, table 0.0089. On average 2 - 0.0089 = 1.9911 lb.
    chances: { 1: 0.0089, 2: 0.9911, 3: 0 },
    near: 590 + 85 * 1.9911,
    far: 690 + 160 * 1.9911,
    abroad: 1_490 + 520 * 1.9911,
    postage: 1_035.58,
    total: 1_481.33,
  },
];
