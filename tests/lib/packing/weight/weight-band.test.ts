import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { packedWeight } from "#lib/packing/weight/packed-weight";
import { weightBand } from "#lib/packing/weight/weight-band";
import { day } from "#lib/units/day";

const weight = packedWeight(learnedWeights([], day("2026-11-25")).known, {
  itemTypeId: "mug",
  cartonId: "cube-8",
  style: "paper",
  predictedMg: 830000,
});
const steps = [
  { label: "up to 500 g", mg: 500000 },
  { label: "up to 1 kg", mg: 1000000 },
  { label: "up to 2 kg", mg: 2000000 },
];

describe("weight band", () => {
  it("promises the lowest step that holds with the wished odds", () => {
    const band = weightBand(weight, steps, 0.9);
    expect(band.promise?.label).toBe("up to 1 kg");
    expect(band.steps.map(({ label }) => label)).toEqual(steps.map(({ label }) => label));
    expect(band.promise?.odds).toBeGreaterThan(0.9);
  });

  it("promises the next step to those who want to be surer", () => {
    expect(weightBand(weight, steps, 0.999).promise?.label).toBe("up to 2 kg");
  });

  it("promises nothing above the last step", () => {
    expect(weightBand(weight, steps.slice(0, 1), 0.9).promise).toBeNull();
    expect(weightBand(weight, [], 0.9)).toEqual({ steps: [], promise: null });
  });

  it("has odds that never fall from step to step", () => {
    const masses = fc.uniqueArray(fc.integer({ min: 1, max: 3_000_000 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(masses, (list) => {
        const rising = [...list].sort((a, b) => a - b).map((mg) => ({ label: `${mg}`, mg }));
        const odds = weightBand(weight, rising, 0.5).steps.map((step) => step.odds);
        expect(odds).toEqual([...odds].sort((a, b) => a - b));
      }),
    );
  });

  it("refuses steps that do not rise and odds of 1", () => {
    expect(() => weightBand(weight, [...steps].reverse(), 0.9)).toThrow(RangeError);
    expect(() => weightBand(weight, steps, 1)).toThrow(RangeError);
  });
});
