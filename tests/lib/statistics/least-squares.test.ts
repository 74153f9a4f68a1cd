import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSquares } from "#lib/statistics/least-squares";

const wide = (count: number) => Array.from({ length: count }, () => [-1e6, 1e6] as const);

// Rosenbrock (1960) and Powell (1962), both with least sum 0 (from memory).
const rosenbrock = ([a = 0, b = 0]: readonly number[]) => [10 * (b - a * a), 1 - a];
const powell = ([a = 0, b = 0, c = 0, d = 0]: readonly number[]) => [
  a + 10 * b,
  Math.sqrt(5) * (c - d),
  (b - 2 * c) ** 2,
  Math.sqrt(10) * (a - d) ** 2,
];

describe("least squares on test functions", () => {
  it("finds Rosenbrock's valley floor at (1, 1)", () => {
    const { parameters, sumOfSquares } = leastSquares({
      residuals: rosenbrock,
      start: [-1.2, 1],
      bounds: wide(2),
    });
    expect(sumOfSquares).toBeLessThan(1e-20);
    expect(parameters[0]).toBeCloseTo(1, 9);
    expect(parameters[1]).toBeCloseTo(1, 9);
  });

  it("comes close to 0 in Powell's function, whose slopes vanish there", () => {
    const { parameters, sumOfSquares } = leastSquares({
      residuals: powell,
      start: [3, -1, 0, 1],
      bounds: wide(4),
    });
    expect(sumOfSquares).toBeLessThan(1e-20);
    for (const value of parameters) expect(Math.abs(value)).toBeLessThan(1e-4);
  });

  it("solves a straight line in closed form: the mean and the slope", () => {
    const xs = [1, 2, 3, 4, 5];
    const ys = [2, 3, 5, 4, 6];
    const line = ([a = 0, b = 0]: readonly number[]) => xs.map((x, index) => a + b * x - (ys[index] ?? 0));
    const { parameters, sumOfSquares } = leastSquares({ residuals: line, start: [0, 0], bounds: wide(2) });
    expect(parameters[0]).toBeCloseTo(1.3, 6);
    expect(parameters[1]).toBeCloseTo(0.9, 6);
    expect(sumOfSquares).toBeCloseTo(1.9, 10);
  });

  it("needs one step for a straight line where it is told to hardly damp it", () => {
    const line = ([a = 0, b = 0]: readonly number[]) => [a + b - 2, a + 2 * b - 3, a + 3 * b - 5];
    const question = { residuals: line, start: [0, 0], bounds: wide(2), steps: 1 };
    // Slope (5 - 2) / 2 = 1.5; mean 10 / 3; sum of squares (1/6)² + (1/3)² + (1/6)² = 1/6.
    expect(leastSquares({ ...question, damping: 1e-9 }).sumOfSquares).toBeCloseTo(1 / 6, 8);
    expect(leastSquares(question).sumOfSquares).toBeGreaterThan(1 / 6 + 1e-6);
  });
});

// Data, starts and certified values of the NIST Statistical Reference Datasets, nonlinear regression (from
// memory; the sum of squares at the certified parameters is checked to be the certified one).
const misra = {
  x: [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
  y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
  starts: [
    [500, 0.0001],
    [250, 0.0005],
  ],
  certified: [238.94212918, 5.5015643181e-4],
  deviations: [2.7070075241, 7.2668688436e-6],
  sumOfSquares: 0.12455138894,
};
const misraResiduals = ([a = 0, b = 0]: readonly number[]) =>
  misra.x.map((x, index) => a * (1 - Math.exp(-b * x)) - (misra.y[index] ?? 0));

const thurber = {
  x: [
    -3.067, -2.981, -2.921, -2.912, -2.84, -2.797, -2.702, -2.699, -2.633, -2.481, -2.363, -2.322, -1.501,
    -1.46, -1.274, -1.212, -1.1, -1.046, -0.915, -0.714, -0.566, -0.545, -0.4, -0.309, -0.109, -0.103, 0.01,
    0.119, 0.377, 0.79, 0.963, 1.006, 1.115, 1.572, 1.841, 2.047, 2.2,
  ],
  y: [
    80.574, 84.248, 87.264, 87.195, 89.076, 89.608, 89.868, 90.101, 92.405, 95.854, 100.696, 101.06, 401.672,
    390.724, 567.534, 635.316, 733.054, 759.087, 894.206, 990.785, 1090.109, 1080.914, 1122.643, 1178.351,
    1260.531, 1273.514, 1288.339, 1327.543, 1353.863, 1414.509, 1425.208, 1421.384, 1442.962, 1464.35,
    1468.705, 1447.894, 1457.628,
  ],
  starts: [
    [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
    [1300, 1500, 500, 75, 1, 0.4, 0.05],
  ],
  certified: [
    1288.13968, 1491.0792535, 583.23836877, 75.416644291, 0.96629502864, 0.39797285797, 0.049727297349,
  ],
  deviations: [
    4.6647963344, 39.571156086, 28.698696102, 5.567537027, 0.031333340687, 0.014984928198, 0.0065842344623,
  ],
  sumOfSquares: 5642.7082397,
};
const thurberResiduals = ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0]: readonly number[]) =>
  thurber.x.map((x, index) => {
    const top = a + x * (b + x * (c + x * d));
    return top / (1 + x * (e + x * (f + x * g))) - (thurber.y[index] ?? 0);
  });

describe.each([
  { name: "Misra1a", of: misra, residuals: misraResiduals },
  { name: "Thurber", of: thurber, residuals: thurberResiduals },
])("least squares on the NIST data $name", ({ of, residuals }) => {
  it("the data and the certified values belong together", () => {
    const sum = residuals(of.certified).reduce((total, residual) => total + residual ** 2, 0);
    expect(Math.abs(sum / of.sumOfSquares - 1)).toBeLessThan(1e-9);
  });

  it.each(of.starts)("meets the certified values from (%s, %s, ...)", (...start) => {
    const answer = leastSquares({ residuals, start, bounds: wide(start.length) });
    // To a thousandth of the certified standard deviation: the search stops at a gain of 1e-9 of the sum,
    // which leaves the parameters that close, whatever their scale.
    expect(answer.parameters).toHaveLength(of.certified.length);
    answer.parameters.forEach((value, index) => {
      const gap = Math.abs(value - (of.certified[index] ?? Number.NaN));
      expect(gap).toBeLessThan(1e-3 * (of.deviations[index] ?? Number.NaN));
    });
    expect(Math.abs(answer.sumOfSquares / of.sumOfSquares - 1)).toBeLessThan(1e-8);
  });
});

const bound = fc
  .tuple(fc.double({ min: -3, max: 3, noNaN: true }), fc.double({ min: 0, max: 3, noNaN: true }))
  .map(([least, width]) => [least, least + width] as const);

describe("least squares within bounds", () => {
  it("stops at the bound when the least lies beyond, and still moves the other parameter", () => {
    const answer = leastSquares({
      residuals: rosenbrock,
      start: [-1.2, 1],
      bounds: [
        [-2, 0.5],
        [-2, 2],
      ],
    });
    expect(answer.parameters[0]).toBe(0.5);
    expect(answer.parameters[1]).toBeCloseTo(0.25, 8);
    expect(answer.sumOfSquares).toBeCloseTo(0.25, 12);
  });

  it("never asks for residuals outside the bounds and never ends worse than it began", () => {
    fc.assert(
      fc.property(
        fc.tuple(bound, bound),
        fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
        (bounds, shares) => {
          const inside = (parameters: readonly number[]) =>
            parameters.every((value, index) => {
              const [least, most] = bounds[index] ?? [0, 0];
              return value >= least && value <= most;
            });
          const asked: boolean[] = [];
          const watched = (parameters: readonly number[]) => {
            asked.push(inside(parameters));
            return rosenbrock(parameters);
          };
          const start = bounds.map(([least, most], index) =>
            Math.min(most, least + (shares[index] ?? 0) * (most - least)),
          );
          const answer = leastSquares({ residuals: watched, start, bounds });
          const before = rosenbrock(start).reduce((sum, residual) => sum + residual ** 2, 0);
          expect(asked.length).toBeGreaterThan(0);
          expect(asked).not.toContain(false);
          expect(inside(answer.parameters)).toBe(true);
          expect(answer.sumOfSquares).toBeLessThanOrEqual(before);
        },
      ),
    );
  });

  it("brings a start from outside to the bound", () => {
    const answer = leastSquares({ residuals: ([a = 0]) => [a - 3], start: [50], bounds: [[5, 9]] });
    expect(answer.parameters).toEqual([5]);
  });

  it("gives the example of its docstring, and the same answer each time", () => {
    const line = () => leastSquares({ residuals: ([a = 0]) => [a - 3], start: [0], bounds: [[-9, 9]] });
    expect(line().parameters[0]).toBeCloseTo(3, 9);
    const question = { residuals: thurberResiduals, start: thurber.starts[0] ?? [], bounds: wide(7) };
    expect(leastSquares(question)).toEqual(leastSquares(question));
  });

  it("leaves a region where the residuals are no numbers", () => {
    const root = ([a = 0]: readonly number[]) => [Math.log(a) - 1];
    const answer = leastSquares({ residuals: root, start: [0.01], bounds: [[-5, 100]] });
    expect(answer.parameters[0]).toBeCloseTo(Math.E, 8);
  });

  it("takes no more steps than it may", () => {
    const one = leastSquares({ residuals: rosenbrock, start: [-1.2, 1], bounds: wide(2), steps: 1 });
    const all = leastSquares({ residuals: rosenbrock, start: [-1.2, 1], bounds: wide(2) });
    expect(one.sumOfSquares).toBeGreaterThan(all.sumOfSquares + 0.1);
    expect(
      leastSquares({ residuals: rosenbrock, start: [2, 2], bounds: wide(2), steps: 0 }).parameters,
    ).toEqual([2, 2]);
  });

  it("refuses bounds of another number than the parameters", () => {
    expect(() => leastSquares({ residuals: rosenbrock, start: [0, 0], bounds: wide(1) })).toThrow(RangeError);
  });
});
