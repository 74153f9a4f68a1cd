import { describe, expect, it } from "vitest";
import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { sidesBlock } from "#lib/cartons/fit/sides";
import { piece, question, uprightPiece } from "./small-question";

type Three = readonly [number, number, number];
const at = (turned: Three, [alongUm, acrossUm, upUm]: Three) => ({
  turned: sidesBlock(turned),
  alongUm,
  acrossUm,
  upUm,
});

const two = question([6, 4, 4], piece(4, 3, 2), uprightPiece(3, 2, 4));
const good = [at([3, 4, 2], [0, 0, 0]), at([3, 2, 4], [3, 0, 0])];

describe("a placement", () => {
  it("holds where each piece stands once, inside, in an allowed turn and apart", () => {
    expect(placementFaults(two, good)).toEqual([]);
    expect(placementFaults(two, [at([3, 4, 2], [0, 0, 0]), at([2, 3, 4], [4, 1, 0])])).toEqual([]);
  });

  it("may touch, and may not overlap by one micrometre on all three axes", () => {
    const cubes = question([4, 4, 4], piece(2, 2, 2), piece(2, 2, 2));
    const first = at([2, 2, 2], [0, 0, 0]);
    for (const corner of [
      [2, 0, 0],
      [0, 2, 0],
      [0, 0, 2],
      [2, 2, 2],
      [2, 1, 1],
    ] as const) {
      expect(placementFaults(cubes, [first, at([2, 2, 2], corner)])).toEqual([]);
      expect(placementFaults(cubes, [at([2, 2, 2], corner), first])).toEqual([]);
    }
    for (const corner of [
      [1, 1, 1],
      [0, 0, 1],
      [1, 0, 0],
      [0, 1, 1],
      [0, 0, 0],
    ] as const) {
      const overlap = [{ kind: "overlap", pieces: [0, 1] }];
      expect(placementFaults(cubes, [first, at([2, 2, 2], corner)])).toEqual(overlap);
      expect(placementFaults(cubes, [at([2, 2, 2], corner), first])).toEqual(overlap);
    }
  });

  it("names a piece that is missing or too many", () => {
    expect(placementFaults(two, good.slice(1))).toEqual([{ kind: "wrong-count", asked: 2, placed: 1 }]);
    expect(placementFaults(two, [...good, ...good])).toEqual([{ kind: "wrong-count", asked: 2, placed: 4 }]);
  });

  it("names a piece with other sides, or tipped though it stays upright", () => {
    const [first, second] = good;
    if (!first || !second) throw new Error("no placement");
    expect(placementFaults(two, [at([3, 3, 2], [0, 0, 0]), second])).toEqual([
      { kind: "wrong-turn", piece: 0 },
    ]);
    expect(placementFaults(two, [first, at([3, 4, 2], [3, 0, 0])])).toEqual([
      { kind: "wrong-turn", piece: 1 },
    ]);
    expect(placementFaults(two, [first, at([2, 4, 3], [3, 0, 0])])).toEqual([
      { kind: "wrong-turn", piece: 1 },
    ]);
  });

  it("names a piece at half a micrometre", () => {
    const half = [at([3, 4, 2], [0, 0, 0.5]), at([3, 2, 4], [3, 0, 0])];
    expect(placementFaults(two, half)).toEqual([{ kind: "not-whole", piece: 0 }]);
    expect(placementFaults(two, [at([3, 4, 2], [Number.NaN, 0, 0]), at([3, 2, 4], [3, 0, 0])])).toEqual([
      { kind: "not-whole", piece: 0 },
    ]);
  });

  it("keeps the clearance at every wall, at the base and at the top", () => {
    const one: FitQuestion = {
      ...question([6, 7, 9], piece(2, 3, 4)),
      clearance: { wallsUm: 2, baseUm: 1, topUm: 4 },
    };
    expect(placementFaults(one, [at([2, 3, 4], [2, 2, 1])])).toEqual([]);
    for (const corner of [
      [1, 2, 1],
      [3, 2, 1],
      [2, 1, 1],
      [2, 3, 1],
      [2, 2, 0],
      [2, 2, 2],
    ] as const) {
      expect(placementFaults(one, [at([2, 3, 4], corner)])).toEqual([{ kind: "outside", piece: 0 }]);
    }
  });
});
