import { describe, expect, it } from "vitest";
import { basisWords } from "#app/outlook/basis-words.ts";
import { lastWeeksSum } from "#app/outlook/last-weeks-sum.ts";
import { leansOn } from "#app/outlook/leans-on.ts";
import { shopFinding } from "#app/outlook/shop-finding.ts";
import { subjectFinding } from "#app/outlook/subject-finding.ts";
import { day } from "#lib/units/day";

const total = { weeks: 3, lastDay: day("2026-12-15"), mean: 2055, low: 1898, high: 2304, enough: 2410 };
const parcels = { ...total, weeks: 4, mean: 100, low: 72, high: 129, enough: 140 };
const weeks = (...restated: readonly number[]) => restated.map((each) => ({ restated: each }));

describe("the finding of a subject", () => {
  it("names the rate and the band of the weeks that stock must last", () => {
    expect(subjectFinding("Packing paper", total, "sheet")).toBe(
      "Packing paper: about 685 sheets a week, 1,900 to 2,300 sheets in the next three weeks.",
    );
  });

  it("says where none is expected", () => {
    const none = { ...total, weeks: 1, mean: 0, low: 0, high: 0, enough: 0 };
    expect(subjectFinding("Void fill", none, "each")).toBe("Void fill: none expected in the next week.");
  });
});

describe("the finding of the shop", () => {
  it("compares the next weeks with as many before", () => {
    expect(shopFinding(parcels, weeks(900, 20, 20, 24, 25))).toBe(
      "About 25 parcels a week: 72 to 129 parcels in the next four weeks, 12\u00a0% more than in the last four (89).",
    );
  });

  it("does not compare where the records are too short or empty", () => {
    const plain = "About 25 parcels a week: 72 to 129 parcels in the next four weeks.";
    expect(shopFinding(parcels, weeks(20, 20, 24))).toBe(plain);
    expect(shopFinding(parcels, weeks(0, 0, 0, 0))).toBe(plain);
  });

  it("has words where no parcel can be forecast", () => {
    expect(shopFinding(null, [])).toBe("What the supplies will take in the coming weeks.");
  });

  it("adds the last weeks only where there are as many", () => {
    expect(lastWeeksSum(weeks(1, 2, 3, 4, 5), 4)).toBe(14);
    expect(lastWeeksSum(weeks(1, 2, 3), 4)).toBeNull();
  });
});

describe("the line under a finding", () => {
  it("names the guess only where there is one", () => {
    const of = (guessedShare: number) =>
      basisWords(day("2026-11-25"), { until: day("2026-11-23"), guessedShare });
    expect(of(0)).toBe(
      "Wednesday 25 November. 8 times in 10 it should come out between these two. From what was recorded before 23 Nov: an estimate, not a promise.",
    );
    expect(of(0.5)).toContain("From your guess and what was recorded before 23 Nov");
  });
});

describe("what a young forecast leans on", () => {
  const none = { guessedParcels: null, likeName: null };

  it("is the seller's guess", () => {
    expect(
      leansOn({ weeksSeen: 2, guessedShare: 1 / 3, likeId: null }, { ...none, guessedParcels: 10 }),
    ).toBe("Two weeks of records: a third of this number is still your guess of 10 parcels a week.");
    expect(leansOn({ weeksSeen: 0, guessedShare: 1, likeId: null }, { ...none, guessedParcels: 1 })).toBe(
      "No full week of records yet: all of this number is still your guess of 1 parcel a week.",
    );
  });

  it("is another item type", () => {
    const fresh = { weeksSeen: 1, guessedShare: 2 / 3, likeId: "teacup" };
    expect(leansOn(fresh, { ...none, likeName: "Teacups" })).toBe(
      "One week of records: it starts from Teacups, the item type nearest in weight, and two thirds of it is still that.",
    );
  });

  it("is said of eight weeks and fewer only", () => {
    expect(leansOn({ weeksSeen: 8, guessedShare: 0, likeId: null }, none)).toBe(
      "Eight weeks of records: take this number with care.",
    );
    expect(leansOn({ weeksSeen: 9, guessedShare: 0, likeId: null }, none)).toBeNull();
  });
});
