/** Lower triangle L of a symmetric matrix A = L Lᵀ, row by row. */
export type Cholesky = readonly (readonly number[])[];

/**
 * Cholesky factor of a symmetric, positive definite matrix.
 *
 * @param matrix rows; only the lower triangle is read
 * @returns the lower triangle, each row as long as its place
 * @throws RangeError when the matrix is not positive definite
 * @see Golub and Van Loan, Matrix Computations, 4.2 (from memory; checked in the tests)
 * @example cholesky([[4, 2], [2, 5]]) // [[2], [1, 2]]
 */
export function cholesky(matrix: readonly (readonly number[])[]): Cholesky {
  const factor: number[][] = [];
  for (const [row, entries] of matrix.entries()) {
    const here: number[] = [];
    for (const [column, above] of factor.entries()) {
      here.push(((entries[column] ?? 0) - headProduct(here, above, column)) / (above[column] ?? 1));
    }
    const pivot = (entries[row] ?? 0) - headProduct(here, here, row);
    if (!(pivot > 0)) {
      throw new RangeError(`cholesky requires a positive definite matrix, got ${pivot} at row ${row}`);
    }
    factor.push([...here, Math.sqrt(pivot)]);
  }
  return factor;
}

/** Sum of the products of the first entries of two rows. */
function headProduct(a: readonly number[], b: readonly number[], count: number): number {
  let sum = 0;
  for (let at = 0; at < count; at += 1) sum += (a[at] ?? 0) * (b[at] ?? 0);
  return sum;
}

/**
 * Solves A x = b from the factor of A.
 *
 * @param factor of `cholesky`
 * @param right b
 * @returns x
 * @example choleskySolve(cholesky([[4, 2], [2, 5]]), [8, 8]) // [1.5, 1]
 */
export function choleskySolve(factor: Cholesky, right: readonly number[]): number[] {
  const x = [...right];
  for (const [row, entries] of factor.entries()) {
    let rest = x[row] ?? 0;
    for (let at = 0; at < row; at += 1) rest -= (entries[at] ?? 0) * (x[at] ?? 0);
    x[row] = rest / (entries[row] ?? 1);
  }
  for (let row = factor.length - 1; row >= 0; row -= 1) {
    let rest = x[row] ?? 0;
    for (let below = row + 1; below < factor.length; below += 1) {
      rest -= (factor[below]?.[row] ?? 0) * (x[below] ?? 0);
    }
    x[row] = rest / (factor[row]?.[row] ?? 1);
  }
  return x;
}

/**
 * Logarithm of the determinant of A.
 *
 * @param factor of `cholesky`
 * @example choleskyLogDeterminant(cholesky([[4, 2], [2, 5]])) // 2.772589, which is ln 16
 */
export function choleskyLogDeterminant(factor: Cholesky): number {
  return factor.reduce((sum, entries, row) => sum + 2 * Math.log(entries[row] ?? 1), 0);
}
