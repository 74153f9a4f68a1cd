import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { costTable } from "#lib/cartons/range/cost-table";
import { rangeCost } from "#lib/cartons/range/range-cost";
import { rangeCurve } from "#lib/cartons/range/range-curve";
import { type Block, blockVolume } from "#lib/packing/block";
import { rangeComparison } from "../../app/command-line/bench/cartons/range-comparison";
import {
  CUBE_SIZES,
  RANGE_CANDIDATES,
  TODAYS_LADDER,
} from "../../app/command-line/bench/cartons/range-giftware";
import { endSolver, solveInWorker } from "../../app/solver/solve-in-worker";

// The rule, from the paper named in data/carton-range-cases.json: every shipment goes into the cheapest stocked carton that
// holds it; so many cartons are stocked that all cost least.
// Rogers, Box Suite Recommendation (2020): https://arxiv.org/abs/2004.11533
type RangeCase = {
  readonly id: string;
  readonly input: {
    readonly candidates: readonly { id: string; dims: readonly number[]; cost: number }[];
    readonly shipments: readonly { dims: readonly number[]; count: number }[];
  };
  readonly expected: { readonly bestByK: Readonly<Record<string, { cost: number; cartons: string[] }>> };
};
const { cases }: { readonly cases: readonly RangeCase[] } = JSON.parse(
  readFileSync(new URL("./data/carton-range-cases.json", import.meta.url), "utf8"),
);

const CM_UM = 10_000;
const VALUE_PER_WHOLE = 1_000_000;
const MEANS = { solve: solveInWorker, seconds: 60, now: () => performance.now() / 1_000 };

function block([length = 0, width = 0, height = 0]: readonly number[]): Block {
  return { lengthUm: length * CM_UM, widthUm: width * CM_UM, heightUm: height * CM_UM };
}

/** Cartons cost their price alone: no fill, tape or postage. */
function tableOf({ candidates, shipments }: RangeCase["input"]) {
  const loads = shipments.map(({ dims, count }) => ({
    load: {
      pieces: [{ block: block(dims), upright: false }],
      ml: blockVolume(block(dims)),
      massMg: 1,
    },
    parcels: count,
  }));
  const cartons = candidates.map(({ id, dims, cost }) => ({
    id,
    inside: block(dims),
    boardUm: 0,
    massMg: 0,
    value: Math.round(cost * VALUE_PER_WHOLE),
  }));
  return costTable(loads, cartons, {
    fill: { mlPerUnit: 1, massMg: 0, value: 0 },
    tape: { pattern: "single", legs: { centreUm: 0, edgeUm: 0 }, factor: 1, massMgPerUm: 0, valuePerUm: 0 },
    bulgeUm: 0,
    postage: () => null,
    clearance: { wallsUm: 0, baseUm: 0, topUm: 0 },
    effort: QUICK_EFFORT,
    unpackedValue: 1_000 * VALUE_PER_WHOLE,
  }).table;
}

afterAll(endSolver);

describe("which cartons to stock, against a published rule", () => {
  it("leaves out no case of the file", () => {
    expect(cases.map(({ id }) => id)).toEqual(["ct-001"]);
  });

  it.each(cases)(
    "$id: the cheapest cartons and their cost, proven, for each number of sizes",
    async (each) => {
      const table = tableOf(each.input);
      const curve = await rangeCurve(table, 4, MEANS, () => undefined);
      const found = curve
        .filter(({ most }) => String(most) in each.expected.bestByK)
        .map((range) => {
          expect(range.proof.proven).toBe(true);
          expect(range.unpackedParcels).toBe(0);
          const cartons = range.chosen.map((size) => table.candidates[size]);
          return [String(range.most), { cost: range.value / VALUE_PER_WHOLE, cartons }];
        });
      expect(Object.fromEntries(found)).toEqual(each.expected.bestByK);
      // No single carton of the case holds every shipment.
      expect(curve[0]?.unpackedParcels).toBe(9);
    },
  );
});

// The parcels' kinds and pieces are real (data/README.md); sizes, masses, prices and rates are invented by a seed. What is
// checked is that the better range is found, not how much anyone would save.
describe("cartons for giftware parcels of invented sizes", () => {
  it("has a ladder of six cubes among 25 candidates", () => {
    expect(RANGE_CANDIDATES.length).toBe(25);
    expect(new Set(RANGE_CANDIDATES.map(({ id }) => id)).size).toBe(25);
    const cubes = CUBE_SIZES.map((size) => RANGE_CANDIDATES[size]?.inside);
    for (const inside of cubes) expect(new Set(Object.values(inside ?? {})).size).toBe(1);
    expect(TODAYS_LADDER.map((size) => RANGE_CANDIDATES[size]?.id)).toEqual(
      [6, 8, 10, 12, 14, 16].map((side) => `${side} × ${side} × ${side} in`),
    );
  });

  it.each([1, 2, 3])(
    "seed %i: the range of six costs less than the best six cubes, and they less than today's",
    async (seed) => {
      const { table, best, bestCubes, todayValue, parcels } = await rangeComparison(seed, 60, MEANS);
      expect(parcels).toBeGreaterThan(50);
      for (const range of [best, bestCubes]) {
        expect(range.proof.proven).toBe(true);
        expect(range.chosen.length).toBeLessThanOrEqual(6);
        expect(rangeCost(table, range.chosen)).toMatchObject({ value: range.value, unpackedParcels: 0 });
      }
      expect(bestCubes.chosen.every((size) => CUBE_SIZES.includes(size))).toBe(true);
      expect(best.value).toBeLessThan(bestCubes.value);
      expect(bestCubes.value).toBeLessThan(todayValue);
    },
  );
});
