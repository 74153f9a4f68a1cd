import { describe, expect, it } from "vitest";
import { cholesky, choleskyLogDeterminant, choleskySolve } from "#lib/statistics/cholesky";

const matrix = [
  [4, 1, 0.5],
  [1, 3, -0.7],
  [0.5, -0.7, 2],
];

describe("Cholesky factor", () => {
  it("of [[4, 2], [2, 5]] is the example of its docstring", () => {
    const factor = cholesky([
      [4, 2],
      [2, 5],
    ]);
    expect(factor).toEqual([[2], [1, 2]]);
    expect(choleskySolve(factor, [8, 8])).toEqual([1.5, 1]);
    expect(choleskyLogDeterminant(factor)).toBeCloseTo(Math.log(16), 12);
  });

  it("solves as another library does", () => {
    // NumPy 2.4.6: linalg.solve and linalg.slogdet.
    const factor = cholesky(matrix);
    const expected = [-0.3114577729962345, 1.2399139322216244, 2.0118343195266273];
    for (const [at, value] of choleskySolve(factor, [1, 2, 3]).entries()) {
      expect(value).toBeCloseTo(expected[at] ?? Number.NaN, 12);
    }
    expect(choleskyLogDeterminant(factor)).toBeCloseTo(2.922623801733353, 12);
  });

  it("refuses a matrix that is not positive definite", () => {
    expect(() =>
      cholesky([
        [1, 2],
        [2, 1],
      ]),
    ).toThrow(RangeError);
  });
});
