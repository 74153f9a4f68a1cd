import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CartonCompression } from "#lib/cartons/strength/box-compression";
import { type StackQuestion, stackHeight } from "#lib/cartons/strength/stack-height";
import { milligrams } from "#lib/units/mass";
import { massOf } from "./packed-load";

// 562.3 lb is a printed example of the short formula: tests/reference.
const compression: CartonCompression = {
  pounds: 562.3,
  poundsPerInch: 32,
  edgeCrushFrom: "printed",
  isShallow: false,
};
const question: StackQuestion = {
  compression,
  grossMg: massOf("20 lb"),
  conditions: { days: 30, humidityPercent: 80, offsetPercent: 0 },
};
function pile(change: Partial<StackQuestion>) {
  const height = stackHeight({ ...question, ...change });
  if (height.kind !== "stack")
    throw new RangeError(`pile requires days within the table, got ${height.days}`);
  return height;
}

describe("stackHeight", () => {
  it("lets 562.3 lb after 30 days at 80 % bear 229.4 lb: eleven cartons of 20 lb on the lowest", () => {
    const height = pile({ safetyFactor: 1 });
    expect(height.bearsPounds).toBeCloseTo(229.4, 1);
    expect(height.cartons).toBe(12);
  });

  it("halves what is left by its usual safety factor, and says which it took", () => {
    expect(pile({})).toMatchObject({ cartons: 6, safetyFactor: 2, compressionPounds: 562.3 });
  });

  it("leaves one carton alone where it bears no other", () => {
    expect(pile({ grossMg: massOf("150 lb") }).cartons).toBe(1);
  });

  it("says what it assumes", () => {
    expect(pile({}).assumes).toEqual([
      "likeCartons",
      "slottedAndTaped",
      "levelFloor",
      "contentsBearNothing",
      "straightPile",
    ]);
    const rough = { ...compression, edgeCrushFrom: "paired" as const, isShallow: true };
    const crooked = { ...question.conditions, offsetPercent: 5 };
    expect(pile({ compression: rough, conditions: crooked, trustedPercent: 70 }).assumes.slice(4)).toEqual([
      "edgeCrushFromBurst",
      "shallowCarton",
      "boardTrustedLess",
    ]);
  });

  it("never rises with weight, nor falls with trust", () => {
    const mass = fc.integer({ min: 1, max: 100_000_000 });
    fc.assert(
      fc.property(mass, mass, fc.integer({ min: 1, max: 100 }), (one, more, percent) => {
        const light = pile({ grossMg: milligrams(one) });
        expect(pile({ grossMg: milligrams(one + more) }).cartons).toBeLessThanOrEqual(light.cartons);
        expect(pile({ grossMg: milligrams(one), trustedPercent: percent }).cartons).toBeLessThanOrEqual(
          light.cartons,
        );
      }),
    );
  });

  it("says where the table of days does not reach", () => {
    const conditions = { ...question.conditions, days: 365 };
    expect(stackHeight({ ...question, conditions })).toEqual({ kind: "beyondTable", days: 365 });
  });

  it.each([
    { grossMg: milligrams(0) },
    { safetyFactor: 0.5 },
    { trustedPercent: 0 },
    { trustedPercent: 101 },
  ])("refuses %o", (change) => {
    expect(() => pile(change)).toThrow(RangeError);
  });
});
