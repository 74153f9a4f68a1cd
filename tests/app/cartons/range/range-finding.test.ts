import { describe, expect, it } from "vitest";
import type { KeptRange } from "#prisma/records/carton-ranges";
import { rangeFinding } from "../../../../app/cartons/range/range-finding";

const SHOP = { currency: "USD", minorDigits: 2, measures: "imperial" } as const;
const DOLLAR = 1_000_000;

function kept(today: number, best: number, proven = true): KeptRange {
  const proof = proven ? { proven: true as const } : { proven: false as const, gap: 0.02 };
  return {
    today: { value: today, unpackedParcels: 0 },
    points: [{ most: 8, value: best, unpackedParcels: 0, chosen: [], proof }],
  } as unknown as KeptRange;
}

describe("the first line of which sizes to keep", () => {
  it("calls a saving that the estimate can't tell by what it is", () => {
    expect(rangeFinding(kept(13_804 * DOLLAR, 13_803 * DOLLAR), 8, SHOP)).toBe(
      "Today's 8 sizes do: 8 sizes chosen anew would save only $1.00 a year.",
    );
  });

  it("names a saving that is worth a change", () => {
    expect(rangeFinding(kept(13_804 * DOLLAR, 13_304 * DOLLAR), 8, SHOP)).toBe(
      "8 sizes could save $500.00 a year against today's 8.",
    );
  });

  it("calls today's the best only where that is proven", () => {
    const value = 13_804 * DOLLAR;
    expect(rangeFinding(kept(value, value), 8, SHOP)).toMatch(/are the best/);
    expect(rangeFinding(kept(value, value, false), 8, SHOP)).toBe(
      "Nothing better than today's 8 sizes was found.",
    );
  });
});
