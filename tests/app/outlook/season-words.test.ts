import { describe, expect, it } from "vitest";
import { partDays, partName, percentWords, seasonWords } from "#app/outlook/season-words.ts";
import { FLAT_SEASON } from "#lib/forecast/season-profile";

describe("the season in words", () => {
  it("says that none is counted on while a year is not full", () => {
    expect(seasonWords(FLAT_SEASON).finding).toBe("No season is counted on yet.");
  });

  it("says that none shows where the years show no shape", () => {
    expect(seasonWords({ ...FLAT_SEASON, years: 2 }).finding).toContain("No season shows");
  });

  it("names the highest and the lowest part and how far it is believed", () => {
    const factors = FLAT_SEASON.factors.with(12, 1.35).with(1, 0.8);
    const { finding, basis } = seasonWords({ factors, years: 2, believed: 0.7 });
    expect(finding).toBe(
      "Most goes out in mid-December (35\u00a0% more than usual), least in mid-February (20\u00a0% less than usual).",
    );
    expect(basis).toContain("two years");
    expect(basis).toContain("70\u00a0%");
  });

  it("cuts the year into thirteen parts without a gap", () => {
    expect([0, 6, 12].map(partName)).toEqual(["mid-January", "early July", "mid-December"]);
    expect(partDays(0)).toBe("1 Jan to 28 Jan");
    expect(partDays(1)).toBe("29 Jan to 25 Feb");
    expect(partDays(12)).toBe("4 Dec to 31 Dec");
    expect(percentWords(1.001)).toBe("as usual");
  });
});
