import { describe, expect, it } from "vitest";
import { entry } from "#lib/cartons/fit/entry";

describe("entry", () => {
  it("is the number at a place", () => {
    expect(entry(Int32Array.of(5, 7), 1)).toBe(7);
  });

  it("refuses a place that the list does not have", () => {
    expect(() => entry(Int32Array.of(5, 7), 2)).toThrow("entry requires a place below 2, got 2");
    expect(() => entry(Int32Array.of(5, 7), -1)).toThrow(RangeError);
  });
});
