import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitSlip } from "#lib/packing/weight/unit-slip";

// International agreement of 1959: one pound is 0.45359237 kg, one ounce a sixteenth of it.
const LB = 453_592.37;
const OZ = LB / 16;
const MG = { g: 1000, kg: 1_000_000, oz: OZ, lb: LB } as const;

describe("unit slip", () => {
  it("finds ounces typed as pounds", () => {
    expect(unitSlip({ mg: 23 * LB, unit: "lb" }, 650_000)).toMatchObject({ typed: "lb", meant: "oz" });
  });

  it.each([
    ["lb", "oz", 16],
    ["oz", "lb", 1 / 16],
    ["oz", "g", 28.349523125],
    ["g", "oz", 1 / 28.349523125],
    ["kg", "lb", 2.20462262],
    ["lb", "kg", 1 / 2.20462262],
    ["kg", "g", 1000],
    ["g", "kg", 1 / 1000],
    ["kg", "oz", 35.27396195],
    ["lb", "g", 453.59237],
  ] as const)("sees %s typed for %s, also where the typed unit was not kept", (typed, meant, times) => {
    const slip = unitSlip({ mg: 1_000_000 * times, unit: null }, 1_000_000);
    expect(slip).toMatchObject({ typed, meant });
    expect(slip?.mg).toBeCloseTo(1_000_000, -1);
  });

  it("leaves a heavy parcel alone", () => {
    expect(unitSlip({ mg: 1_500_000, unit: "g" }, 1_000_000)).toBeNull();
    expect(unitSlip({ mg: 6_000_000, unit: "kg" }, 1_000_000)).toBeNull();
  });

  it("gives what was meant for any weight and a bill within a tenth", () => {
    const units = fc.constantFrom("g", "kg", "oz", "lb");
    fc.assert(
      fc.property(
        units,
        units,
        fc.integer({ min: 50_000, max: 30_000_000 }),
        fc.double({ min: 0.9, max: 1.1, noNaN: true }),
        (typed, meant, mg, off) => {
          fc.pre(typed !== meant);
          const slip = unitSlip({ mg: (mg / MG[meant]) * MG[typed], unit: typed }, mg * off);
          expect(slip?.meant).toBe(meant);
          expect((slip?.mg ?? 0) / mg).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it.each([
    [0, 1],
    [1, 0],
    [Number.NaN, 1],
  ])("refuses %s mg where %s mg are expected", (mg, expected) => {
    expect(() => unitSlip({ mg, unit: null }, expected)).toThrow(RangeError);
  });
});
