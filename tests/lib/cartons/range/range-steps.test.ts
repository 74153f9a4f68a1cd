import { describe, expect, it } from "vitest";
import { rangeSteps } from "#lib/cartons/range/range-steps";
import { everyChoice, plainCost, smallTable } from "./small-tables";

const table = {
  candidates: ["a", "b", "c", "d"],
  rows: [
    { parcels: 10, values: [5, null, 3, null] },
    { parcels: 4, values: [null, 9, null, 8] },
  ],
  unpackedValue: 100,
};

describe("rangeSteps", () => {
  it("exchanges a size at a time, the best step first, and says what to run down", () => {
    // a for c saves 20, b for d saves 4; a for d would leave ten parcels without a carton.
    expect(rangeSteps(table, [0, 1], [2, 3], [12, null, 0, 0])).toEqual({
      beforeValue: 86,
      steps: [
        { buy: 2, leave: { size: 0, onHand: 12 }, value: 66, change: -20, unpackedParcels: 0 },
        { buy: 3, leave: { size: 1, onHand: null }, value: 62, change: -4, unpackedParcels: 0 },
      ],
      neverRises: true,
    });
  });

  it("has no steps where nothing changes", () => {
    expect(rangeSteps(table, [0, 1], [1, 0], [])).toEqual({ beforeValue: 86, steps: [], neverRises: true });
  });

  it("says so where a step makes parcels dearer", () => {
    expect(rangeSteps(table, [0, 1], [1], [0, 0, 0, 0])).toMatchObject({
      steps: [{ buy: null, leave: { size: 0, onHand: 0 }, change: 950, unpackedParcels: 10 }],
      neverRises: false,
    });
  });

  it("leads from any range to any other, each value as the table has it, with no more kinds than at its ends", () => {
    for (let seed = 1; seed <= 15; seed++) {
      const small = smallTable(seed);
      const ranges = everyChoice(small.candidates.length, 3).slice(0, 25);
      for (const today of ranges) for (const best of ranges) expectWay(small, today, best);
    }
  });

  it("refuses a size that is no candidate", () => {
    expect(() => rangeSteps(table, [0], [7], [])).toThrow(RangeError);
    expect(() => rangeSteps(table, [9], [0], [])).toThrow(RangeError);
  });
});

function expectWay(
  small: typeof table | ReturnType<typeof smallTable>,
  today: number[],
  best: number[],
): void {
  const { beforeValue, steps, neverRises } = rangeSteps(small, today, best, []);
  expect(beforeValue).toBe(plainCost(small, today));
  const range = new Set(today);
  let value = beforeValue;
  for (const step of steps) {
    if (step.leave !== null) expect(range.delete(step.leave.size)).toBe(true);
    if (step.buy !== null) range.add(step.buy);
    expect(step.value).toBe(plainCost(small, [...range]));
    expect(step.change).toBe(step.value - value);
    expect(range.size).toBeLessThanOrEqual(Math.max(today.length, best.length));
    value = step.value;
  }
  expect([...range].toSorted()).toEqual(best.toSorted());
  expect(neverRises).toBe(steps.every(({ change }) => change <= 0));
}
