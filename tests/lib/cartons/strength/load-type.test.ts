import { describe, expect, it } from "vitest";
import { loadTypeOf } from "#lib/cartons/strength/load-type";

// A national post's types of load, 2002: tests/reference.
describe("loadTypeOf", () => {
  it("takes fragile or dense contents as difficult, even where they fill the box", () => {
    expect(loadTypeOf({ isFragile: true, isDense: false, fillsBox: true })).toBe("difficult");
    expect(loadTypeOf({ isFragile: false, isDense: true, fillsBox: true })).toBe("difficult");
  });

  it("takes others by whether they fill the box", () => {
    expect(loadTypeOf({ isFragile: false, isDense: false, fillsBox: true })).toBe("easy");
    expect(loadTypeOf({ isFragile: false, isDense: false, fillsBox: false })).toBe("average");
  });
});
