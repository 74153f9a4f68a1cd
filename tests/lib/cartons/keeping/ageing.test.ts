import { describe, expect, it } from "vitest";
import { AGEING, ageingClass } from "#lib/cartons/keeping/ageing";

const classOf = (silentWeeks: number, coverMonths: number | null, wasUsed = true) =>
  ageingClass({ silentWeeks, coverMonths, wasUsed });

// Bounds are conventions: common practice, no source.
describe("ageingClass", () => {
  it("takes the worse one of silence and cover, at the bound itself", () => {
    expect(classOf(7, 5.9)).toBe("moves");
    expect(classOf(8, 1)).toBe("slow");
    expect(classOf(0, 6)).toBe("slow");
    expect(classOf(26, 1)).toBe("sits");
    expect(classOf(0, 24)).toBe("sits");
  });

  it("goes by silence alone where nothing was used of late", () => {
    expect(classOf(13, null)).toBe("slow");
    expect(classOf(30, null)).toBe("sits");
  });

  it("does not judge what was never used and is new", () => {
    expect(classOf(7, null, false)).toBe("tooNew");
    expect(classOf(8, null, false)).toBe("slow");
  });

  it("goes by the shop's own bounds, which must rise", () => {
    const carton = { silentWeeks: 5, coverMonths: 1, wasUsed: true };
    const settings = { ...AGEING, slow: { silentWeeks: 4, coverMonths: 6 } };
    expect(ageingClass(carton, settings)).toBe("slow");
    const wrong = { ...AGEING, slow: { silentWeeks: 30, coverMonths: 6 } };
    expect(() => ageingClass(carton, wrong)).toThrow(RangeError);
  });
});
