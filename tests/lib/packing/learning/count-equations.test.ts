import { describe, expect, it } from "vitest";
import { countEquations, errorCovariance } from "#lib/packing/learning/count-equations";
import { stepBundles } from "#lib/packing/learning/step-bundles";
import { cholesky, choleskySolve } from "#lib/statistics/cholesky";
import { tridiagonalFactor, tridiagonalWhite } from "#lib/statistics/tridiagonal";
import { amountOfUnits } from "#lib/units/amount";
import { addDays } from "#lib/units/day";
import { FIRST_DAY, shelf } from "./shelf";

const uses = [4, 7, 2, 9, 5].map((times) => ({ "mug/fill": { times, units: 11 } }));
const intervals = shelf([400, 348, 255, 232, 110, 44], uses);
const bundles = stepBundles(intervals);
const today = addDays(FIRST_DAY, 35);

describe("count equations", () => {
  it("say what went beyond the cards", () => {
    const equations = countEquations(intervals, bundles, today);
    expect(equations.beyond).toEqual([52 - 44, 93 - 77, 23 - 22, 122 - 99, 66 - 55]);
    expect(equations.byCards).toEqual([[44], [77], [22], [99], [55]]);
  });

  it("add what was received and leave out what was booked as spoilt or changed by hand", () => {
    const [first] = shelf([100, 130], [{ "mug/fill": { times: 2, units: 11 } }]);
    if (first === undefined) throw new RangeError("the shelf has an interval");
    const interval = {
      ...first,
      received: amountOfUnits(70),
      spoilt: amountOfUnits(5),
      usedByBook: amountOfUnits(25),
    };
    // 100 + 70 - 130 - 5 = 35 went, of which the parcels' lines say 25.
    expect(countEquations([interval], stepBundles([interval]), today).beyond).toEqual([10]);
  });

  it("let two intervals in a row share their count, and no others", () => {
    const apart = intervals.map((interval, at) =>
      at < 3 ? interval : { ...interval, from: addDays(interval.from, 1) },
    );
    const shared = errorCovariance(countEquations(intervals, bundles, today), 1, 1);
    expect(shared.beside.every((entry) => entry < 0)).toBe(true);
    const parted = errorCovariance(countEquations(apart, bundles, today), 1, 1);
    expect(parted.beside.map((entry) => entry < 0)).toEqual([true, true, false, false]);
  });

  it("count half what is half a year old", () => {
    const later = countEquations(intervals, bundles, addDays(today, 180));
    expect(later.left.at(-1)).toBe(0.5);
  });

  it("give the factor that a Kalman filter over stock and factor gives", () => {
    const equations = countEquations(intervals, bundles, today);
    const level = { ...equations, left: equations.left.map(() => 1) };
    const prior = 0.3;
    const factor = tridiagonalFactor(errorCovariance(level, 1, 1));
    const x = tridiagonalWhite(
      factor,
      level.byCards.map(([units]) => units ?? 0),
    );
    const y = tridiagonalWhite(factor, level.beyond);
    const precision = x.reduce((sum, value) => sum + value * value, 1 / prior ** 2);
    const mean = 1 + x.reduce((sum, value, at) => sum + value * (y[at] ?? 0), 0) / precision;
    const filtered = kalman([400, 348, 255, 232, 110, 44], level, prior);
    expect(mean).toBeCloseTo(filtered.factor, 6);
    expect(1 / precision).toBeCloseTo(filtered.variance, 8);
  });
});

/** Stock and factor as states, each count a noisy look at the stock: written out, with a flat start of the stock. */
function kalman(
  counted: readonly number[],
  { byCards, useVariances, countVariances }: ReturnType<typeof countEquations>,
  prior: number,
): { factor: number; variance: number } {
  let [stock, factor] = [counted[0] ?? 0, 1];
  let [ss, sf, ff] = [countVariances[0] ?? 0, 0, prior ** 2];
  for (const [at, [units = 0]] of byCards.entries()) {
    stock -= units * factor;
    ss += units * units * ff - 2 * units * sf + (useVariances[at] ?? 0);
    sf -= units * ff;
    const noise = countVariances[at + 1] ?? 0;
    const [gainStock, gainFactor] = [ss / (ss + noise), sf / (ss + noise)];
    const surprise = (counted[at + 1] ?? 0) - stock;
    stock += gainStock * surprise;
    factor += gainFactor * surprise;
    ff -= gainFactor * sf;
    sf -= gainStock * sf;
    ss -= gainStock * ss;
  }
  return { factor, variance: ff };
}

describe("the Kalman filter of this test", () => {
  it("is ordinary Bayesian regression where counts are exact", () => {
    const equations = { ...countEquations(intervals, bundles, today), countVariances: [0, 0, 0, 0, 0, 0] };
    const { factor, variance } = kalman([400, 348, 255, 232, 110, 44], equations, 0.3);
    const rows = equations.byCards.map(([units = 0], at) => ({
      units,
      noise: equations.useVariances[at] ?? 1,
    }));
    const precision = cholesky([
      [rows.reduce((sum, { units, noise }) => sum + units ** 2 / noise, 1 / 0.09)],
    ]);
    const right = rows.reduce(
      (sum, { units, noise }, at) => sum + (units * (equations.beyond[at] ?? 0)) / noise,
      0,
    );
    expect(factor).toBeCloseTo(1 + (choleskySolve(precision, [right])[0] ?? 0), 9);
    expect(variance).toBeCloseTo(choleskySolve(precision, [1])[0] ?? 0, 12);
  });
});
