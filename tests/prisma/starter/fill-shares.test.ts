import { describe, expect, it } from "vitest";
import { fillShares } from "#prisma/starter/fill-shares";

// Common practice, no source: 52 cubic inches a sheet of packing paper, 65 a square foot of large bubble.
describe("fillShares", () => {
  it("rounds paper to whole sheets: 372 cubic inches are 7 sheets", () => {
    expect(fillShares(372, "paper")).toEqual({ base: "2", rest: "5" });
  });

  it("keeps bubble to hundredths: 530 cubic inches are 8.15 square feet", () => {
    const { base, rest } = fillShares(530, "bubble");
    expect(Number(base) + Number(rest)).toBeCloseTo(8.15, 10);
    expect(Number(base)).toBe(2.5);
  });
});
