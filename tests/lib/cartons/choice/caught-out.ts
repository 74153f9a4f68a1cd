import { inches } from "./mug-bench";

/** Greedy passes only. */
export const NO_SEARCH = { shuffles: 0, groups: 0, looks: 1 };

type Sides = readonly [number, number, number];

const example = (smaller: Sides, larger: Sides, blocks: readonly Sides[]) => ({
  smaller: inches(...smaller),
  larger: inches(...larger),
  pieces: blocks.map((sides) => ({ block: inches(...sides), upright: false })),
});

/** Seven blocks that greedy passes find a place for in a carton and, by bad luck, not in a larger one. Found by trying. */
export const CAUGHT_OUT = [
  example(
    [8, 5, 7],
    [8, 5, 8],
    [
      [4, 5, 2],
      [2, 5, 4],
      [3, 5, 2],
      [5, 5, 4],
      [3, 3, 3],
      [1, 1, 2],
      [4, 1, 2],
    ],
  ),
  example(
    [7, 6, 7],
    [7, 7, 7],
    [
      [4, 4, 2],
      [4, 2, 4],
      [4, 5, 2],
      [3, 2, 1],
      [5, 3, 4],
      [4, 2, 4],
      [4, 5, 3],
    ],
  ),
  example(
    [5, 6, 8],
    [5, 6, 9],
    [
      [4, 2, 3],
      [3, 3, 2],
      [5, 2, 3],
      [2, 3, 4],
      [3, 4, 3],
      [4, 4, 3],
      [5, 4, 3],
    ],
  ),
];
