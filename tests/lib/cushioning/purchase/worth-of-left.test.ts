import { describe, expect, it } from "vitest";
import { worthOfLeft } from "#lib/cushioning/purchase/worth-of-left";

describe("the worth of what is left over", () => {
  it("is that of each unit, as far as units count", () => {
    expect(worthOfLeft({ leftMinor: 7, worthUpTo: 100 }, 60)).toBe(420);
    expect(worthOfLeft({ leftMinor: 7, worthUpTo: 100 }, 130)).toBe(700);
    expect(worthOfLeft({ leftMinor: 7, worthUpTo: Number.POSITIVE_INFINITY }, 130)).toBe(910);
  });

  it("is nothing for what is owed", () => {
    expect(worthOfLeft({ leftMinor: 7, worthUpTo: 100 }, -5)).toBe(0);
  });
});
