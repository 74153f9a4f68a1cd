/** A search for the parameters that make the sum of squared residuals least. */
export type LeastSquaresQuestion = {
  /** residuals at given parameters; always as many; an entry that is no finite number counts as huge */
  readonly residuals: (parameters: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  /** least and most of each parameter */
  readonly bounds: readonly (readonly [number, number])[];
  /** steps taken at most; 60 if left out */
  readonly steps?: number;
  /** damping of the first step: small where the residuals are close to straight; 0.01 if left out */
  readonly damping?: number;
};

/** Where the search ended. */
export type LeastSquaresAnswer = { readonly parameters: readonly number[]; readonly sumOfSquares: number };

const HUGE = 1e150;
const MOST_STEPS = 60;
const FIRST_DAMPING = 1e-2;
const LEAST_DAMPING = 1e-12;
const MOST_DAMPING = 1e12;
const DAMPING_FACTOR = 4;
const CLOSE = 1e-9;
/** Cube root of the precision of a double: the best step of a central difference. */
const DIFFERENCE = 6e-6;

/**
 * Least squares within bounds, by the damped Gauss-Newton steps of Levenberg and Marquardt: each step
 * solves (J'J + d diag(J'J)) s = -J'r over the parameters that no bound holds, and is kept where it makes
 * the sum smaller. The same question always gives the same answer.
 *
 * @param question residuals, start, bounds
 * @returns the best parameters found, and their sum of squares
 * @throws RangeError when start and bounds differ in number
 * @see D. W. Marquardt (1963), An algorithm for least-squares estimation of nonlinear parameters, SIAM
 * Journal 11 (from memory)
 * @example leastSquares({ residuals: ([a = 0]) => [a - 3], start: [0], bounds: [[-9, 9]] }).parameters // [3]
 */
export function leastSquares(question: LeastSquaresQuestion): LeastSquaresAnswer {
  const { residuals, bounds, steps = MOST_STEPS, damping: firstDamping = FIRST_DAMPING } = question;
  if (bounds.length !== question.start.length) {
    throw new RangeError(
      `leastSquares requires ${question.start.length} bounds, one a parameter, got ${bounds.length}`,
    );
  }
  let at = within(question.start, bounds);
  let here = residuals(at);
  let sum = sumOfSquares(here);
  let damping = firstDamping;
  for (let step = 0; step < steps && sum > 0; step += 1) {
    const jacobian = at.map((_, index) => derivative(residuals, at, index, bounds));
    const slope = jacobian.map((column) => dot(column, here));
    const products = productsOf(jacobian);
    const free = at.map((value, index) => isFree(value, slope[index] ?? 0, bounds[index]));
    let isBetter = false;
    let gain = 0;
    while (!isBetter && damping <= MOST_DAMPING) {
      const move = dampedStep(products, slope, free, damping);
      const next = within(
        at.map((value, index) => value + (move[index] ?? 0)),
        bounds,
      );
      const there = residuals(next);
      const sumThere = sumOfSquares(there);
      isBetter = sumThere < sum;
      if (isBetter) {
        gain = sum - sumThere;
        [at, here, sum] = [next, there, sumThere];
        damping = Math.max(LEAST_DAMPING, damping / DAMPING_FACTOR);
      } else {
        damping *= DAMPING_FACTOR;
      }
    }
    if (!isBetter || gain <= CLOSE * sum) break;
  }
  return { parameters: at, sumOfSquares: sum };
}

function within(parameters: readonly number[], bounds: LeastSquaresQuestion["bounds"]): number[] {
  return parameters.map((value, index) => {
    const [least, most] = bounds[index] ?? [value, value];
    return Math.min(most, Math.max(least, value));
  });
}

function isFree(value: number, slope: number, bound: readonly [number, number] | undefined): boolean {
  const [least, most] = bound ?? [-Infinity, Infinity];
  return !(value <= least && slope > 0) && !(value >= most && slope < 0);
}

function derivative(
  residuals: LeastSquaresQuestion["residuals"],
  at: readonly number[],
  index: number,
  bounds: LeastSquaresQuestion["bounds"],
): number[] {
  const value = at[index] ?? 0;
  const width = DIFFERENCE * Math.max(1, Math.abs(value));
  const [least, most] = bounds[index] ?? [-Infinity, Infinity];
  const above = Math.min(most, value + width);
  const below = Math.max(least, value - width);
  if (above <= below) return residuals(at).map(() => 0);
  const high = residuals(at.with(index, above));
  const low = residuals(at.with(index, below));
  return high.map((residual, row) => tame((residual - (low[row] ?? 0)) / (above - below)));
}

/** J'J, from its columns. */
function productsOf(jacobian: readonly (readonly number[])[]): number[][] {
  const products = jacobian.map((): number[] => []);
  for (const [row, left] of jacobian.entries()) {
    for (let column = 0; column <= row; column += 1) {
      const entry = dot(left, jacobian[column] ?? []);
      (products[row] ?? [])[column] = entry;
      (products[column] ?? [])[row] = entry;
    }
  }
  return products;
}

function dampedStep(
  products: readonly (readonly number[])[],
  slope: readonly number[],
  free: readonly boolean[],
  damping: number,
): number[] {
  const moving = free.flatMap((isMoving, index) => (isMoving ? [index] : []));
  const matrix = moving.map((row) =>
    moving.map((column) => {
      const entry = products[row]?.[column] ?? 0;
      return row === column ? entry * (1 + damping) + Number.MIN_VALUE : entry;
    }),
  );
  const solved = solve(
    matrix,
    moving.map((index) => -(slope[index] ?? 0)),
  );
  return free.map((_, index) => solved[moving.indexOf(index)] ?? 0);
}

/** Gaussian elimination with row pivots; a direction without slope gets no step. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  for (let pivot = 0; pivot < rows.length; pivot += 1) eliminate(rows, pivot);
  return backSubstituted(rows);
}

/** Brings the row with the largest entry of a column to the top, and clears the column below it. */
function eliminate(rows: number[][], pivot: number): void {
  let best = pivot;
  for (let row = pivot + 1; row < rows.length; row += 1) {
    if (Math.abs(rows[row]?.[pivot] ?? 0) > Math.abs(rows[best]?.[pivot] ?? 0)) best = row;
  }
  const top = rows[best] ?? [];
  rows[best] = rows[pivot] ?? [];
  rows[pivot] = top;
  const divisor = top[pivot] ?? 0;
  if (divisor === 0) return;
  for (const row of rows.slice(pivot + 1)) {
    const factor = (row[pivot] ?? 0) / divisor;
    for (let column = pivot; column < row.length; column += 1) {
      row[column] = (row[column] ?? 0) - factor * (top[column] ?? 0);
    }
  }
}

function backSubstituted(rows: readonly (readonly number[])[]): number[] {
  const size = rows.length;
  const solved = new Array<number>(size).fill(0);
  for (let row = size - 1; row >= 0; row -= 1) {
    const line = rows[row] ?? [];
    let rest = line[size] ?? 0;
    for (let column = row + 1; column < size; column += 1)
      rest -= (solved[column] ?? 0) * (line[column] ?? 0);
    const divisor = line[row] ?? 0;
    solved[row] = divisor === 0 ? 0 : rest / divisor;
  }
  return solved;
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += (a[index] ?? 0) * (b[index] ?? 0);
  return Number.isFinite(sum) ? sum : HUGE;
}

function sumOfSquares(residuals: readonly number[]): number {
  return dot(residuals, residuals);
}

function tame(value: number): number {
  return Number.isFinite(value) ? value : HUGE;
}
