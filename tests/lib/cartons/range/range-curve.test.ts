import { afterAll, describe, expect, it } from "vitest";
import { type CurvePoint, rangeCurve } from "#lib/cartons/range/range-curve";
import { endSolver, solveInWorker } from "../../../../app/solver/solve-in-worker";
import { cheapestOf, smallTable } from "./small-tables";

const now = () => performance.now() / 1_000;
const MEANS = { solve: solveInWorker, seconds: 60, now };

afterAll(endSolver);

describe("rangeCurve", () => {
  it("has the least cost for each number of sizes, which never rises, and tells of each in order", async () => {
    for (let seed = 1; seed <= 30; seed++) {
      const table = smallTable(seed);
      const told: CurvePoint[] = [];
      const curve = await rangeCurve(table, 5, MEANS, (point) => {
        told.push(point);
      });
      expect(told).toEqual(curve);
      expect(curve.map(({ most }) => most)).toEqual([1, 2, 3, 4, 5]);
      expect(curve.map(({ value }) => value)).toEqual([1, 2, 3, 4, 5].map((most) => cheapestOf(table, most)));
      expect(curve.every(({ proof }) => proof.proven)).toBe(true);
    }
  });

  it("never rises where there is no time to prove anything", async () => {
    for (let seed = 1; seed <= 30; seed++) {
      const curve = await rangeCurve(smallTable(seed), 5, { ...MEANS, seconds: 0 }, () => undefined);
      const values = curve.map(({ value }) => value);
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }
  });

  it("refuses less than one size", async () => {
    await expect(rangeCurve(smallTable(1), 0, MEANS, () => undefined)).rejects.toThrow(RangeError);
  });
});
