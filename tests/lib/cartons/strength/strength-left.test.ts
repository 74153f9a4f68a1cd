import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { strengthLeft } from "#lib/cartons/strength/strength-left";

const straight = { days: 10, humidityPercent: 50, offsetPercent: 0 };
const share = (change: Partial<typeof straight>) => {
  const left = strengthLeft({ ...straight, ...change });
  return left.kind === "left" ? left.share : null;
};

// A box maker's table of compression losses: tests/reference.
describe("strengthLeft", () => {
  it("takes the weaker row between two", () => {
    expect(share({ days: 11 })).toBe(0.6);
    expect(share({ days: 0 })).toBe(0.63);
    expect(share({ humidityPercent: 61 })).toBeCloseTo(0.63 * 0.8, 12);
    expect(share({ humidityPercent: 20 })).toBe(0.63);
  });

  it("multiplies its factors", () => {
    expect(strengthLeft({ days: 30, humidityPercent: 80, offsetPercent: 10 })).toEqual({
      kind: "left",
      share: 0.6 * 0.68 * 0.75,
      time: 0.6,
      humidity: 0.68,
      offset: 0.75,
    });
  });

  it("has nothing left where cartons stand 40 % askew or more", () => {
    expect(share({ offsetPercent: 40 })).toBe(0);
    expect(share({ offsetPercent: 60 })).toBe(0);
  });

  it("says where the table does not reach", () => {
    expect(strengthLeft({ ...straight, days: 181 })).toEqual({ kind: "beyondTable", days: 181 });
  });

  it("never rises with days, damp or a more crooked pile", () => {
    const conditions = fc.record({
      days: fc.integer({ min: 0, max: 180 }),
      humidityPercent: fc.integer({ min: 0, max: 100 }),
      offsetPercent: fc.integer({ min: 0, max: 100 }),
    });
    fc.assert(
      fc.property(conditions, conditions, (one, other) => {
        const worse = {
          days: Math.max(one.days, other.days),
          humidityPercent: Math.max(one.humidityPercent, other.humidityPercent),
          offsetPercent: Math.max(one.offsetPercent, other.offsetPercent),
        };
        expect(share(worse)).toBeLessThanOrEqual(share(one) ?? Number.NaN);
      }),
    );
  });

  it.each([{ days: -1 }, { humidityPercent: 101 }, { offsetPercent: -1 }, { days: Number.NaN }])(
    "refuses %o",
    (change) => {
      expect(() => strengthLeft({ ...straight, ...change })).toThrow(RangeError);
    },
  );
});
