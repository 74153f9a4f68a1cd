import { describe, expect, it } from "vitest";
import { countDeviation } from "#lib/packing/learning/count-deviation";

describe("deviation of a count", () => {
  it("is a share of the pile and at least half a unit", () => {
    expect(countDeviation(100, "height")).toBeCloseTo(5.02, 2);
    expect(countDeviation(0, "number")).toBe(0.5);
    expect(countDeviation(-3, "looks-right")).toBe(0.5);
  });

  it("is smaller the more carefully one counts", () => {
    const by = (["number", "weight", "height", "looks-right"] as const).map((way) =>
      countDeviation(200, way),
    );
    expect(by).toEqual([...by].sort((a, b) => a - b));
    expect(new Set(by).size).toBe(4);
  });

  it("covers a misread roll of the trade's own figures", () => {
    // A 175 ft roll (full 18.5 in, core 3 in) at 12 in holds 71 ft; misread by 1/8 in it is 69 to 72 ft
    // (length = full length x (d² - core²) / (full² - core²), common practice, no source).
    const feet = (inches: number) => (175 * (inches ** 2 - 9)) / (18.5 ** 2 - 9);
    expect(feet(12)).toBeCloseTo(70.9, 1);
    expect(Math.abs(feet(12.125) - feet(12))).toBeLessThan(countDeviation(feet(12), "roll"));
  });
});
