import { describe, expect, it } from "vitest";
import { storedMass } from "#lib/cartons/strength/stored-mass";
import { massOf } from "./packed-load";

describe("storedMass", () => {
  it("is what a typed mass is stored as", () => {
    expect(storedMass(21, "lb")).toBe(massOf("21 lb"));
    expect(storedMass(100, "lb")).toBe(massOf("100 lb"));
    expect(storedMass(23, "kg")).toBe(23_000_000);
  });

  it.each([-1, 1.5])("refuses %s", (count) => {
    expect(() => storedMass(count, "lb")).toThrow(RangeError);
  });
});
