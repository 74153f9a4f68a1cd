import { describe, expect, it } from "vitest";
import { fractionText } from "#lib/units/fraction-text";

describe("fractionText", () => {
  it("shows one and a third", () => {
    expect(fractionText(16000, 12000)).toBe("1⅓");
  });

  it("shows a fraction below one without a nought", () => {
    expect(fractionText(10500, 12000)).toBe("⅞");
  });

  it("shows a whole number bare", () => {
    expect(fractionText(84000, 12000)).toBe("7");
  });

  it("has no text for a fifth, which is not cut on a bench", () => {
    expect(fractionText(2400, 12000)).toBeNull();
  });
});
