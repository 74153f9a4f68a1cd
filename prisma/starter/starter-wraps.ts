import type { StarterSupply } from "#prisma/starter/starter-supply";

/**
 * The soft supplies that the starter recipes reach for. Common practice, no source: the masses follow
 * from usual paper weights (tissue 17 g/m², packing paper 48.8 g/m²) and usual film weights (small bubble
 * 50 g/m², large bubble 85 g/m², carton tape 2.3 g/m); every shop should weigh its own.
 */
export const STARTER_WRAPS: readonly StarterSupply[] = [
  {
    id: "tissue",
    name: "Tissue",
    kind: "tissue",
    material: "tissue",
    unit: "sheet",
    massMg: 6_600,
    inches: [30, 20],
    note: "White, 20 × 30 in. Goes next to the surface.",
  },
  {
    id: "packing-paper",
    name: "Packing paper",
    kind: "paper",
    material: "packing-paper",
    unit: "sheet",
    massMg: 27_200,
    inches: [36, 24],
    sheetNm: 76_200,
    note: "Newsprint, 24 × 36 in. Crumpled it fills about 52 cubic inches a sheet.",
  },
  {
    id: "small-bubble",
    name: "Small bubble",
    kind: "bubble",
    material: "small-bubble",
    unit: "piece",
    massMg: 4_600,
    inches: [12, 12],
    roll: { coreInches: 3, fullInches: 18.5, fullUnits: 175 },
    note: "Roll 12 in wide, torn every 12 in. Tissue goes between it and a glaze.",
  },
  {
    id: "large-bubble",
    name: "Large bubble",
    kind: "bubble",
    material: "large-bubble",
    unit: "square-foot",
    massMg: 7_900,
    inches: [12],
    counted: { word: "roll of 125 ft", units: 125 },
    note: "Roll 12 in wide. As fill it takes about 65 cubic inches a square foot.",
  },
  {
    id: "household-tape",
    name: "Household tape",
    kind: "tape",
    material: "household-tape",
    unit: "strip",
    massMg: 70,
    inches: [3, 0.75],
    counted: { word: "roll of 36 yd", units: 432 },
    note: "Strips of 3 in that hold a wrap together. Never on a glaze, gilt or paint.",
  },
  {
    id: "carton-tape",
    name: "Carton tape",
    kind: "tape",
    material: "carton-tape",
    unit: "foot",
    massMg: 701,
    inches: [],
    counted: { word: "roll of 110 yd", units: 330 },
    roll: { coreInches: 3.1, fullInches: 4.44, fullUnits: 330 },
    note: "2 in wide. The lengths are those of an H over both ends of the carton.",
  },
];
