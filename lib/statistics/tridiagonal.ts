/** A symmetric, positive definite matrix with nothing but its diagonal and the entries beside it. */
export type Tridiagonal = {
  readonly diagonal: readonly number[];
  /** entry of rows k and k + 1 at place k; one fewer than the diagonal */
  readonly beside: readonly number[];
};

/** A = L D Lᵀ with ones on the diagonal of L. */
export type TridiagonalFactor = {
  readonly pivots: readonly number[];
  /** entry of L in row k + 1, column k */
  readonly below: readonly number[];
};

/**
 * Factor of a tridiagonal matrix, in time that grows with its rows only.
 *
 * @param matrix diagonal and the entries beside it
 * @returns L and D of A = L D Lᵀ
 * @throws RangeError when the matrix is not positive definite
 * @see Golub and Van Loan, Matrix Computations, 4.3.6 (from memory; checked in the tests against a full matrix)
 * @example tridiagonalFactor({ diagonal: [2, 2], beside: [-1] }) // { pivots: [2, 1.5], below: [-0.5] }
 */
export function tridiagonalFactor({ diagonal, beside }: Tridiagonal): TridiagonalFactor {
  const pivots: number[] = [];
  const below: number[] = [];
  for (const [row, entry] of diagonal.entries()) {
    const before = pivots.at(-1);
    const side = beside[row - 1] ?? 0;
    const slope = before === undefined ? 0 : side / before;
    if (before !== undefined) below.push(slope);
    const pivot = entry - slope * side;
    if (!(pivot > 0)) {
      throw new RangeError(
        `tridiagonalFactor requires a positive definite matrix, got ${pivot} at row ${row}`,
      );
    }
    pivots.push(pivot);
  }
  return { pivots, below };
}

/**
 * The values made independent: L⁻¹ b, each divided by the root of its pivot, so that sums of squares of the result are
 * bᵀ A⁻¹ b.
 *
 * @param factor of `tridiagonalFactor`
 * @param values b
 * @example tridiagonalWhite({ pivots: [4], below: [] }, [6]) // [3]
 */
export function tridiagonalWhite({ pivots, below }: TridiagonalFactor, values: readonly number[]): number[] {
  const white: number[] = [];
  let carried = 0;
  for (const [row, pivot] of pivots.entries()) {
    carried = (values[row] ?? 0) - (row === 0 ? 0 : (below[row - 1] ?? 0) * carried);
    white.push(carried / Math.sqrt(pivot));
  }
  return white;
}

/**
 * Solves A x = b.
 *
 * @param factor of `tridiagonalFactor`
 * @param right b
 * @returns x
 * @example tridiagonalSolve(tridiagonalFactor({ diagonal: [2, 2], beside: [-1] }), [1, 1]) // [1, 1]
 */
export function tridiagonalSolve(factor: TridiagonalFactor, right: readonly number[]): number[] {
  const { pivots, below } = factor;
  const x = tridiagonalWhite(factor, right).map((white, row) => white / Math.sqrt(pivots[row] ?? 1));
  for (let row = x.length - 2; row >= 0; row -= 1) {
    x[row] = (x[row] ?? 0) - (below[row] ?? 0) * (x[row + 1] ?? 0);
  }
  return x;
}

/**
 * Diagonal of A⁻¹ and the entries beside it, from the last row up.
 *
 * @param factor of `tridiagonalFactor`
 * @see Lᵀ A⁻¹ = D⁻¹ L⁻¹, whose right side is lower triangular (checked in the tests against a full matrix)
 * @example tridiagonalInverse(tridiagonalFactor({ diagonal: [2, 2], beside: [-1] })) // 2/3 twice, 1/3 beside
 */
export function tridiagonalInverse({ pivots, below }: TridiagonalFactor): Tridiagonal {
  const diagonal = pivots.map(() => 0);
  const beside = below.map(() => 0);
  for (let row = pivots.length - 1; row >= 0; row -= 1) {
    const slope = below[row] ?? 0;
    const next = diagonal[row + 1] ?? 0;
    diagonal[row] = 1 / (pivots[row] ?? 1) + slope * slope * next;
    if (row < below.length) beside[row] = -slope * next;
  }
  return { diagonal, beside };
}
