import type { StarterItem } from "#prisma/starter/starter-item";

/** Figures, tiles, clocks and the heavy contrast. Common practice, no source; pack and weigh one. */
export const STARTER_OTHERS: readonly StarterItem[] = [
  {
    id: "figurine",
    name: "Figurine",
    grams: 350,
    wraps: [
      { words: "Twists under arms, between fingers, round the neck", supply: "tissue", value: "1" },
      { words: "Crumple round it to a soft egg", supply: "tissue", value: "1" },
      { words: "Bind all of it", supply: "tissue", value: "1" },
      { words: "Wrap loosely, no tension on limbs", supply: "small-bubble", value: "5" },
      { words: "Hold the wrap", supply: "household-tape", value: "3" },
    ],
    voidCubicInches: 480,
    stand: "Lay it in the middle; fill the sides and the top",
    tapeInches: 83,
    cartons: [{ upTo: 1, sizes: "12x8x8" }],
    note: "An inner carton for anything with fingers, flowers or lace.",
  },
  {
    id: "framed-tile",
    name: "Framed tile",
    grams: 900,
    wraps: [
      { words: "Over the face, card pads and corners on it", supply: "tissue", value: "1" },
      { words: "Wrap round", supply: "small-bubble", value: "4" },
      { words: "One pad on each face", supply: "large-bubble", value: "2" },
      { words: "Hold the wrap", supply: "household-tape", value: "4" },
    ],
    voidCubicInches: 326,
    stand: "On edge; fill the sides and the top",
    tapeInches: 99,
    cartons: [{ upTo: 1, sizes: "12x12x4" }],
    note: "A cross of low-tack tape on glass only, never on a picture or a glaze.",
  },
  {
    id: "mantel-clock",
    name: "Mantel clock",
    grams: 2200,
    wraps: [
      { words: "In the case, so that nothing swings", supply: "packing-paper", value: "2" },
      { words: "Wrap the case, card over the glass", supply: "tissue", value: "2" },
      { words: "Corners and face", supply: "small-bubble", value: "4" },
      { words: "Wrap the whole", supply: "large-bubble", value: "9" },
      { words: "Hold door and wrap", supply: "household-tape", value: "6" },
    ],
    voidCubicInches: 1359,
    stand: "Stand it in the middle; fill the sides and the top",
    tapeInches: 107,
    cartons: [{ upTo: 1, sizes: "16x12x12" }],
    note: "Run down; pendulum, key and weights out and bagged. A second carton round it is preferred.",
  },
  {
    id: "iron-pan",
    name: "Iron pan",
    grams: 2300,
    wraps: [
      { words: "Wrap pan and handle, a board under and over", supply: "packing-paper", value: "6" },
      { words: "Hold the wrap", supply: "household-tape", value: "4" },
    ],
    voidCubicInches: 318,
    stand: "No empty space: brace the sides and the top",
    tapeInches: 111,
    cartons: [{ upTo: 1, sizes: "18x12x4" }],
    note: "For a pan of about 10 in. It is the carton that breaks, and the handle.",
  },
];
