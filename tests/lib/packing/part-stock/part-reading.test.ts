import { describe, expect, it } from "vitest";
import { partsOnHand } from "#lib/packing/part-stock/part-reading";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { inches } from "../bench-shop";

const EIGHTH = inches(0.125);
const bubble = {
  by: "roll-diameter",
  coreUm: inches(3),
  fullUm: inches(18.5),
  fullAmount: amountOfUnits(175),
  errorUm: EIGHTH,
} as const;
const tape = {
  by: "roll-diameter",
  coreUm: inches(3.1),
  fullUm: inches(4.44),
  fullAmount: amountOfUnits(330),
  errorUm: EIGHTH / 4,
} as const;
const feet = (part: ReturnType<typeof partsOnHand>) =>
  [part.low, part.amount, part.high].map((each) => Math.round(unitsOf(each)));

// Roll sizes are from memory; the lengths are computed from the formula of a wound strip.
describe("partsOnHand", () => {
  it("finds 71 ft of small bubble at 12 in, between 69 and 72 where an eighth was misread", () => {
    expect(feet(partsOnHand([{ ...bubble, outerUm: inches(12) }]))).toEqual([69, 71, 72]);
  });

  it("never finds more than a full roll, or less than a bare core", () => {
    // Computed: 175 x (18.375² - 3²) / (18.5² - 3²) = 172.6.
    expect(feet(partsOnHand([{ ...bubble, outerUm: bubble.fullUm }]))).toEqual([173, 175, 175]);
    expect(partsOnHand([{ ...bubble, outerUm: bubble.coreUm }]).low).toBe(0);
  });

  it("adds several rolls open at once, and one that is whole", () => {
    const readings = [
      { ...bubble, outerUm: inches(12) },
      { ...bubble, outerUm: inches(8) },
      { by: "count", amount: amountOfUnits(175) } as const,
    ];
    const sum = partsOnHand(readings);
    const apart = readings.map((each) => partsOnHand([each]).amount);
    expect(sum.amount).toBe(apart.reduce((total, each) => total + each, 0));
    expect(sum.low < sum.amount && sum.amount < sum.high).toBe(true);
  });

  it("finds 87 yd of carton tape at 4.2 in across", () => {
    const left = partsOnHand([{ ...tape, outerUm: inches(4.2) }]);
    expect(Math.round(unitsOf(left.amount) / 3)).toBe(87);
    expect(left.low < left.amount && left.amount < left.high).toBe(true);
  });

  it("weighs rolls and piles, off by as much as the scale is", () => {
    const roll = { by: "roll-weight", grossMg: 600_000, coreMg: 0, massMg: 4645, errorMg: 4645 } as const;
    expect(feet(partsOnHand([roll]))).toEqual([128, 129, 130]);
    const pile = {
      by: "pile-weight",
      grossMg: 272_160,
      wrapperMg: 0,
      massMg: 27_216,
      errorMg: 27_216,
    } as const;
    expect(feet(partsOnHand([pile]))).toEqual([9, 10, 11]);
  });

  it("measures a pressed pile, off by as much as the ruler is", () => {
    const pile = { by: "pile-height", heightUm: inches(0.9), sheetNm: 76_200, errorUm: 1524 } as const;
    expect(feet(partsOnHand([pile]))).toEqual([280, 300, 320]);
  });

  it("is nothing where nothing is open", () => {
    expect(partsOnHand([])).toEqual({ amount: 0, low: 0, high: 0 });
  });
});
