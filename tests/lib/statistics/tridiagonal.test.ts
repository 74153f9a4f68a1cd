import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cholesky, choleskyLogDeterminant, choleskySolve } from "#lib/statistics/cholesky";
import {
  type Tridiagonal,
  tridiagonalFactor,
  tridiagonalInverse,
  tridiagonalSolve,
  tridiagonalWhite,
} from "#lib/statistics/tridiagonal";

function full({ diagonal, beside }: Tridiagonal): number[][] {
  return diagonal.map((entry, row) =>
    diagonal.map((_, column) => {
      if (row === column) return entry;
      return Math.abs(row - column) === 1 ? (beside[Math.min(row, column)] ?? 0) : 0;
    }),
  );
}

/** Like the errors of counts: each neighbour pair shares less than both have. */
const matrices = fc
  .array(fc.tuple(fc.double({ min: 0.1, max: 9, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true })), {
    minLength: 1,
    maxLength: 9,
  })
  .map((list) => ({
    diagonal: list.map(([own, shared], at) => own + shared + (list[at - 1]?.[1] ?? 0)),
    beside: list.slice(0, -1).map(([, shared]) => -shared),
  }));

describe("tridiagonal matrix", () => {
  it("[[2, -1], [-1, 2]] is the example of the docstrings", () => {
    const factor = tridiagonalFactor({ diagonal: [2, 2], beside: [-1] });
    expect(factor).toEqual({ pivots: [2, 1.5], below: [-0.5] });
    expect(tridiagonalSolve(factor, [1, 1])).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
    const inverse = tridiagonalInverse(factor);
    expect(inverse.diagonal).toEqual([expect.closeTo(2 / 3, 12), expect.closeTo(2 / 3, 12)]);
    expect(inverse.beside).toEqual([expect.closeTo(1 / 3, 12)]);
    expect(tridiagonalWhite({ pivots: [4], below: [] }, [6])).toEqual([3]);
  });

  it("solves, inverts and whitens like the full matrix", () => {
    fc.assert(
      fc.property(matrices, (matrix) => {
        const factor = tridiagonalFactor(matrix);
        const whole = cholesky(full(matrix));
        const right = matrix.diagonal.map((_, at) => Math.sin(at + 1));
        const expected = choleskySolve(whole, right);
        tridiagonalSolve(factor, right).forEach((value, at) => {
          expect(value).toBeCloseTo(expected[at] ?? Number.NaN, 7);
        });
        const white = tridiagonalWhite(factor, right);
        const square = right.reduce((sum, value, at) => sum + value * (expected[at] ?? 0), 0);
        expect(white.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(square, 7);
        const logDeterminant = factor.pivots.reduce((sum, pivot) => sum + Math.log(pivot), 0);
        expect(logDeterminant).toBeCloseTo(choleskyLogDeterminant(whole), 9);
        const inverse = tridiagonalInverse(factor);
        for (const [at, entry] of inverse.diagonal.entries()) {
          const column = choleskySolve(
            whole,
            right.map((_, row) => Number(row === at)),
          );
          expect(entry).toBeCloseTo(column[at] ?? Number.NaN, 7);
          expect(inverse.beside[at] ?? 0).toBeCloseTo(column[at + 1] ?? 0, 7);
        }
      }),
    );
  });

  it("refuses what is not positive definite", () => {
    expect(() => tridiagonalFactor({ diagonal: [1, 1], beside: [2] })).toThrow(RangeError);
  });
});
