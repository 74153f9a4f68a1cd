import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundWrap } from "#lib/packing/wrap/round-wrap";
import { inches } from "../bench-shop";

const bubble = { layers: 2, thickUm: 4762.5, overlapUm: inches(2), endMarginUm: inches(1) };
const length = (across: number, height: number, change: Partial<typeof bubble>) =>
  roundWrap({ acrossUm: inches(across), heightUm: inches(height) }, { ...bubble, ...change });

// Computed from the formula; the sizes are common practice.
describe("roundWrap", () => {
  it("is 32.6 by 9.5 in twice round a mug 4.5 in across and 4 in high", () => {
    const need = length(4.5, 4, {});
    expect(need.lengthUm / 25_400).toBeCloseTo(32.6, 1);
    expect(need.wishedWidthUm).toBe(inches(9.5));
    expect(need.widthUm).toBe(inches(8.5));
  });

  it("is 49.7 in three times round it, and 63.3 in of large bubble three times round a vase of 5 in", () => {
    expect(length(4.5, 4, { layers: 3 }).lengthUm / 25_400).toBeCloseTo(49.7, 1);
    expect(length(5, 10, { layers: 3, thickUm: 12_700 }).lengthUm / 25_400).toBeCloseTo(63.3, 1);
  });

  it("is the sum of circles through the middle of each layer", () => {
    const sizes = fc.integer({ min: 10_000, max: 500_000 });
    const thickness = fc.nat(15_000);
    fc.assert(
      fc.property(sizes, thickness, fc.integer({ min: 1, max: 12 }), (acrossUm, thickUm, layers) => {
        const circles = Array.from(
          { length: layers },
          (_, k) => Math.PI * (acrossUm + (2 * k + 1) * thickUm),
        );
        const sum = circles.reduce((total, each) => total + each, 0);
        const wrap = { layers, thickUm, overlapUm: 0, endMarginUm: 0 };
        expect(Math.abs(roundWrap({ acrossUm, heightUm: 1 }, wrap).lengthUm - sum)).toBeLessThanOrEqual(0.51);
      }),
    );
  });
});
