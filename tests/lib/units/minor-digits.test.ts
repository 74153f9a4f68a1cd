import { describe, expect, it } from "vitest";
import { minorDigitsOf } from "#lib/units/minor-digits";

describe("minor digits", () => {
  // ISO 4217, list one: minor units of JPY 0, USD 2, KWD 3.
  it.each([
    ["JPY", 0],
    ["USD", 2],
    ["KWD", 3],
  ])("knows the minor digits of %s", (currency, digits) => {
    expect(minorDigitsOf(currency)).toBe(digits);
  });
});
