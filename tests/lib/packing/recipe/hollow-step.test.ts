import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { hollowStep } from "#lib/packing/recipe/hollow-step";
import { card, mug, paper, tissue } from "../bench-shop";

describe("hollowStep", () => {
  it("fills a share of the hollow loosely, rounded up to half a sheet", () => {
    const step = hollowStep(mug, tissue, USUAL_HABITS, "imperial");
    expect(step?.words).toBe("Fill the hollow loosely with tissue");
    // Computed: 0.6 x π/4 x 3² x 3.75 = 15.9 cu in; 86 x 600 / 864 x 17 / 48.8 = 20.8 cu in a sheet.
    expect([step?.theory, step?.used]).toEqual(["0.8 sheet", "1 sheet"]);
    expect(step?.reason).toBe("60 % of 27 cu in, at 21 cu in each: 0.8 sheet, rounded up.");
  });

  it("takes more where a shop fills it all, and less of a larger sheet", () => {
    const full = hollowStep(mug, tissue, { ...USUAL_HABITS, hollowShare: 1 }, "imperial");
    expect(full?.used).toBe("1½ sheets");
    expect(hollowStep(mug, paper, USUAL_HABITS, "imperial")?.used).toBe("½ sheet");
  });

  it("speaks of several hollows, and of firm fill", () => {
    const pot = {
      ...mug,
      hollows: [{ kind: "volume", ml: 100 } as const, { kind: "volume", ml: 50 } as const],
    };
    const step = hollowStep(pot, tissue, { ...USUAL_HABITS, hollowManner: "firm" }, "metric");
    expect(step?.words).toBe("Fill the hollows firmly with tissue");
  });

  it("is not there for a piece without hollows", () => {
    expect(hollowStep({ ...mug, hollows: [] }, tissue, USUAL_HABITS, "imperial")).toBeNull();
  });

  it("refuses what fills nothing", () => {
    expect(() => hollowStep(mug, card, USUAL_HABITS, "imperial")).toThrow(RangeError);
  });
});
