import { afterAll, describe, expect, it } from "vitest";
import type { LinearModel } from "#lib/optimisation/linear-model";
import { modelText } from "#lib/optimisation/model-text";
import { endSolver, solveInWorker } from "../../../app/solver/solve-in-worker";

afterAll(endSolver);

const whole = (name: string, upper: number, cost: number) =>
  ({ name, kind: "whole", lower: 0, upper, cost }) as const;

describe("a model as text", () => {
  it("is read by HiGHS as it was meant: a knapsack whose best is 4 + 5, found by hand", async () => {
    // Weights 2, 3, 4; values 4, 5, 6; at most 5.
    const columns = [whole("a", 1, -4), whole("b", 1, -5), whole("c", 1, -6)];
    const terms = [
      [2, "a"],
      [3, "b"],
      [4, "c"],
    ] as const;
    const rows = [{ name: "weight", terms, lower: Number.NEGATIVE_INFINITY, upper: 5 }];
    const answer = await solveInWorker(modelText({ columns, rows }), { seconds: 5, gap: 0 });
    expect(answer).toMatchObject({ kind: "optimal", bound: -9, values: { a: 1, b: 1, c: 0 } });
  });

  it("keeps bounds below nothing, rows with two limits, equal limits and tiny factors", async () => {
    const real = (name: string, lower: number, upper: number, cost: number) =>
      ({ name, kind: "real", lower, upper, cost }) as const;
    const model: LinearModel = {
      columns: [
        real("x", Number.NEGATIVE_INFINITY, 5, 1),
        real("y", -3, Number.POSITIVE_INFINITY, -1),
        real("z", 2, 2, 1),
      ],
      rows: [
        {
          name: "both",
          terms: [
            [1, "x"],
            [1, "z"],
          ],
          lower: -1,
          upper: 7,
        },
        { name: "same", terms: [[1e-7, "y"]], lower: 4e-7, upper: 4e-7 },
      ],
    };
    const { values } = await solveInWorker(modelText(model), { seconds: 5, gap: 0 });
    expect(values?.["x"]).toBeCloseTo(-3, 6);
    expect(values?.["y"]).toBeCloseTo(4, 3);
    expect(values?.["z"]).toBe(2);
  });

  it("breaks long sums into lines", () => {
    const columns = Array.from({ length: 30 }, (_, index) => whole(`x${index}`, 1, 1));
    const lines = modelText({ columns, rows: [] }).split("\n");
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThan(100);
  });

  it.each([
    ["a name like a number", { columns: [whole("e1", 1, 1)], rows: [] }, /plain name, got e1/],
    [
      "an unknown column",
      { columns: [whole("a", 1, 1)], rows: [{ name: "r", terms: [[1, "b"]], lower: 0, upper: 1 }] },
      /known column, got b/,
    ],
    [
      "a factor that is no number",
      { columns: [whole("a", 1, Number.NaN)], rows: [] },
      /finite numbers, got NaN/,
    ],
    ["bounds that cross", { columns: [whole("a", -1, 1)], rows: [] }, /do not cross, got column a/],
    ["an empty sum", { columns: [], rows: [] }, /at least one term/],
  ] satisfies [string, LinearModel, RegExp][])("refuses %s", (_, model, message) => {
    expect(() => modelText(model)).toThrow(message);
  });
});
