import { afterAll, describe, expect, it } from "vitest";
import { nestedSizes } from "#lib/cartons/range/nested-sizes";
import { type CartonRange, rangeOf } from "#lib/cartons/range/range-of";
import type { RangeTable } from "#lib/cartons/range/range-table";
import type { Solve } from "#lib/optimisation/solve";
import { evenRandom } from "#lib/statistics/even-random";
import { endSolver, solveInWorker } from "../../../../app/solver/solve-in-worker";
import { cheapestOf, plainCost, smallTable } from "./small-tables";

const now = () => performance.now() / 1_000;
const MEANS = { solve: solveInWorker, seconds: 60, now };
const noSolver: Solve = () => Promise.reject(new Error("the thread ended"));

const TWELVE = Array.from({ length: 12 }, (_, at) => at);

/**
 * A parcel for each two of twelve sizes, which alone hold it, all alike: halves of all sizes would hold everything. Any six
 * leave the 15 pairs of the other six without a carton.
 */
const HARD: RangeTable = {
  candidates: TWELVE.map(String),
  rows: TWELVE.flatMap((one) =>
    TWELVE.slice(one + 1).map((other) => ({
      parcels: 1,
      values: TWELVE.map((size) => (size === one || size === other ? 0 : null)),
    })),
  ),
  unpackedValue: 10,
};

afterAll(endSolver);

describe("rangeOf", () => {
  it("finds the least cost of all choices of 200 small tables, by a range that costs it, and proves it", async () => {
    for (let seed = 1; seed <= 200; seed++) {
      const table = smallTable(seed);
      for (const most of [1, 2, 3, 4]) {
        const range = await rangeOf(table, most, MEANS);
        expect(range.value, `seed ${seed}, ${most} sizes`).toBe(cheapestOf(table, most));
        expect(plainCost(table, range.chosen)).toBe(range.value);
        expect(range.chosen.length).toBeLessThanOrEqual(most);
        expect(range.proof).toMatchObject({ proven: true, boundValue: range.value, gap: 0 });
      }
    }
  });

  it("costs the same where sizes have one measure and each thing goes into the smallest", async () => {
    const random = evenRandom(1);
    for (let turn = 0; turn < 60; turn++) {
      const sizes = Array.from({ length: 7 }, (_, at) => ({
        size: at + 1,
        count: 1 + Math.floor(random() * 20),
        unitCost: 10 * at + Math.floor(random() * 10),
      }));
      const unpackedValue = 10_000;
      const table = {
        candidates: sizes.map(({ size }) => String(size)),
        rows: sizes.map(({ size, count }) => ({
          parcels: count,
          values: sizes.map((into) => (into.size >= size ? into.unitCost : null)),
        })),
        unpackedValue,
      };
      const most = 1 + (turn % 5);
      // Costs rise with the size here, so that the smallest size is the cheapest.
      expect((await rangeOf(table, most, MEANS)).value).toBe(nestedSizes(sizes, most).cost);
    }
  });

  it("tells apart what fits none, and never keeps a size that takes nothing", async () => {
    const table: RangeTable = {
      candidates: ["a", "b", "c"],
      rows: [
        { parcels: 4, values: [5, 5, null] },
        { parcels: 3, values: [null, null, null] },
        { parcels: 2, values: [null, null, 6] },
      ],
      unpackedValue: 100,
    };
    expect(await rangeOf(table, 3, MEANS)).toMatchObject({
      chosen: [0, 2],
      value: 20 + 300 + 12,
      unpackedParcels: 3,
    });
    expect(await rangeOf(table, 1, MEANS)).toMatchObject({ chosen: [0], unpackedParcels: 5 });
    expect(await rangeOf({ ...table, rows: [] }, 2, MEANS)).toMatchObject({ chosen: [], value: 0 });
  });

  it("asks the solver where the relaxation cannot close, and says so", async () => {
    const { proof, value }: CartonRange = await rangeOf(HARD, 6, MEANS);
    expect(value).toBe(150);
    expect(proof).toMatchObject({ proven: true, solver: { kind: "answered" } });
  });

  it("gives its own range with its own bound where the solver fails or there is no time", async () => {
    const failed = await rangeOf(HARD, 6, { ...MEANS, solve: noSolver });
    expect(failed.value).toBe(150);
    expect(failed.proof).toMatchObject({
      proven: false,
      solver: { kind: "failed", message: "the thread ended" },
    });
    expect(failed.proof.boundValue).toBeLessThan(150);
    const hurried = await rangeOf(HARD, 6, { ...MEANS, seconds: 0 });
    expect(hurried).toMatchObject({ value: 150, proof: { proven: false, solver: { kind: "no-time" } } });
  });

  it("does not believe a solver that stocks too many sizes", async () => {
    const everything = Object.fromEntries(TWELVE.map((size) => [`stocked_${size}`, 1]));
    const solve: Solve = () => Promise.resolve({ kind: "optimal", values: everything, bound: 1, seconds: 0 });
    const { value, chosen, proof } = await rangeOf(HARD, 6, { ...MEANS, solve });
    expect([value, chosen.length]).toEqual([150, 6]);
    expect(proof).toMatchObject({ proven: false, boundValue: 0, solver: { kind: "failed" } });
  });

  it("refuses less than one size", async () => {
    await expect(rangeOf(HARD, 0, MEANS)).rejects.toThrow(/sizes from 1, got 0/);
    await expect(rangeOf(HARD, 1.5, MEANS)).rejects.toThrow(RangeError);
  });
});
