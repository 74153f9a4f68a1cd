import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import {
  type PackedWeight,
  packedWeight,
  packedWeightQuantile,
  packedWeightUpTo,
} from "#lib/packing/weight/packed-weight";
import type { PastParcel } from "#lib/packing/weight/weighed-parcel";
import { addDays, day } from "#lib/units/day";

const today = day("2026-11-25");
const mug = { itemTypeId: "mug", cartonId: "cube-8", style: "paper", predictedMg: 937000 } as const;

function parcels(errors: readonly number[], bill = 937000): PastParcel[] {
  return errors.map((error, at) => ({
    ...mug,
    predictedMg: bill,
    packedOn: addDays(today, at - errors.length),
    scaleMg: Math.round(bill * (1 + error)),
    unusual: false,
  }));
}

function learnedFrom(errors: readonly number[]): PackedWeight {
  return packedWeight(learnedWeights(parcels(errors), today).known, mug);
}

const errorLists = fc.array(fc.double({ min: -0.12, max: 0.15, noNaN: true }), {
  minLength: 4,
  maxLength: 30,
});

describe("packed weight", () => {
  it("is the bill without parcels, with a tenth and at least 50 g as margin", () => {
    // Common practice, no source: fewer than 5 parcels, 10 % and at least 50 g.
    const weight = learnedFrom([]);
    expect(weight).toMatchObject({ likelyMg: 937000, parcels: 0, basis: "guess", guess: true });
    expect(packedWeightQuantile(weight, 0.9)).toBeCloseTo(937000 + 93700, -1);
    const light = packedWeight(learnedWeights([], today).known, { ...mug, predictedMg: 200000 });
    expect(packedWeightQuantile(light, 0.9)).toBeCloseTo(250000, -1);
  });

  it("is a guess with four parcels and none with five", () => {
    expect(learnedFrom([0.03, 0.05, 0.04, 0.06]).guess).toBe(true);
    expect(learnedFrom([0.03, 0.05, 0.04, 0.06, 0.05])).toMatchObject({
      guess: false,
      basis: "group",
      parcels: 5,
    });
  });

  it("rests on the item type where the carton is new", () => {
    const learned = learnedWeights(parcels([0.03, 0.05, 0.04, 0.06, 0.05]), today).known;
    const next = packedWeight(learned, { ...mug, cartonId: "cube-12" });
    expect(next).toMatchObject({ basis: "item-type", parcels: 5, guess: false });
    const known = packedWeight(learned, mug);
    expect(next.deviationMg).toBeGreaterThan(known.deviationMg);
  });

  it("learns that all parcels weigh 6 % more", () => {
    const weight = learnedFrom(Array.from({ length: 40 }, (_, at) => 0.06 + 0.01 * Math.sin(at)));
    expect(weight.likelyMg / 937000).toBeCloseTo(1.06, 2);
    expect(packedWeightUpTo(weight, weight.likelyMg)).toBeCloseTo(0.5, 4);
  });

  it("is surer with more parcels", () => {
    const few = learnedFrom([0.02, 0.06, 0.04, 0.05, 0.03, 0.01]);
    const many = learnedFrom(
      Array.from({ length: 60 }, (_, at) => [0.02, 0.06, 0.04, 0.05, 0.03, 0.01][at % 6] ?? 0),
    );
    expect(many.deviationMg).toBeLessThan(few.deviationMg);
  });

  it("does not move for one parcel that was typed in the wrong unit", () => {
    fc.assert(
      fc.property(errorLists, fc.constantFrom(16, 1 / 16, 28.349523125, 1000), (errors, times) => {
        const all = parcels(errors);
        const mistyped = { ...(all[0] as PastParcel), scaleMg: Math.round(937000 * times) };
        const moved = packedWeight(learnedWeights([...all, mistyped], today).known, mug);
        expect(moved.likelyMg).toBe(learnedFrom(errors).likelyMg);
        expect(moved.deviationMg).toBe(learnedFrom(errors).deviationMg);
      }),
      { numRuns: 30 },
    );
  });

  it("moves by less than 4 % of the bill for one parcel that weighs half as much again", () => {
    fc.assert(
      fc.property(errorLists, (errors) => {
        expect(Math.abs(learnedFrom([...errors, 0.5]).likelyMg - learnedFrom(errors).likelyMg)).toBeLessThan(
          0.04 * 937000,
        );
      }),
      { numRuns: 30 },
    );
  });

  it("is not wider by a tenth after one more parcel at the likely weight", () => {
    fc.assert(
      fc.property(errorLists, (errors) => {
        const before = learnedFrom(errors);
        const margin = (weight: PackedWeight) => packedWeightQuantile(weight, 0.9) - weight.likelyMg;
        const more = learnedFrom([...errors, before.likelyMg / 937000 - 1]);
        expect(margin(more)).toBeLessThan(1.1 * margin(before));
      }),
      { numRuns: 30 },
    );
  });

  it("has odds that never fall with the limit and quantiles that undo them", () => {
    fc.assert(
      fc.property(errorLists, fc.integer({ min: 1, max: 99 }), (errors, percent) => {
        const weight = learnedFrom(errors);
        const limit = packedWeightQuantile(weight, percent / 100);
        expect(packedWeightUpTo(weight, limit)).toBeCloseTo(percent / 100, 3);
        expect(packedWeightUpTo(weight, limit + 10000)).toBeGreaterThanOrEqual(
          packedWeightUpTo(weight, limit),
        );
      }),
      { numRuns: 30 },
    );
  });

  it("refuses a bill without a mass", () => {
    expect(() => packedWeight(learnedWeights([], today).known, { ...mug, predictedMg: 0 })).toThrow(
      RangeError,
    );
  });
});
