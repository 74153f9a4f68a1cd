import { describe, expect, it } from "vitest";
import type { PeakRow } from "#app/this-week/peak-rows.ts";
import { amountToHave, busiestWords } from "#app/this-week/peak-words.ts";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const row = (times: number, busiestWeek = "2026-11-09"): PeakRow => ({
  supplyId: "paper",
  name: "Packing paper",
  unit: "sheet",
  busiestWeek: day(busiestWeek),
  times,
  until: day("2027-01-04"),
  needed: amountOfUnits(100),
  missing: amountOfUnits(40),
});

describe("the peak in words", () => {
  it("rounds what to have up to whole use units", () => {
    expect(amountToHave(amountOfUnits(18.7), "each")).toBe("19");
    expect(amountToHave(amountOfUnits(53), "each")).toBe("53");
  });

  it("says one busiest week once", () => {
    const { together, each } = busiestWords([row(1.84), row(1.8)]);
    expect(together).toBe("Busiest in the week from 9 Nov, 1.8 times this week’s use. ");
    expect(each(row(1.8))).toBe("");
  });

  it("says it with each supply where they differ", () => {
    const rows = [row(1.8), row(2.5, "2026-12-07")];
    const { together, each } = busiestWords(rows);
    expect(together).toBe("");
    expect(rows.map(each)).toEqual([
      "Busiest in the week from 9 Nov, 1.8 times this week’s use; ",
      "Busiest in the week from 7 Dec, 2.5 times this week’s use; ",
    ]);
  });
});
