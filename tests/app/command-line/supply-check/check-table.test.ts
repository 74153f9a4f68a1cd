import { describe, expect, it } from "vitest";
import { checkTable } from "#app/command-line/supply-check/check-table.ts";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { checkRow } from "../../this-week/check-row-fixture";

/** The cells of the one supply in the table. */
function cellsOf(changes: Parameters<typeof checkRow>[0]): string[] {
  const row = checkRow({ supply: "Tape", unit: "piece", ...changes });
  const table = checkTable({ day: day("2026-11-25"), finding: "Order one.", rows: [row], toCount: [] });
  const line = table.split("\n").find((text) => text.includes(" Tape "));
  return (line ?? "").split(/ {2,}/);
}

describe("table of the weekly check", () => {
  it("shows what the book says to the eighth and the average whole", () => {
    const units = { onHand: 1_120.125, onOrder: 1_500, usePerWeek: 635.875 };
    const cells = cellsOf({
      onHand: amountOfUnits(units.onHand),
      onOrder: amountOfUnits(units.onOrder),
      usePerWeek: amountOfUnits(units.usePerWeek),
    });
    expect(cells.slice(1, 5)).toEqual(["Tape", "1,120⅛ pieces", "1,500 pieces", "636 pieces"]);
  });

  it("marks what is not known, which is not zero", () => {
    expect(cellsOf({ onHand: null, usePerWeek: null }).slice(1, 4)).toEqual(["Tape", "?", "?"]);
    expect(cellsOf({ onHand: amountOfUnits(0), usePerWeek: amountOfUnits(0) }).slice(2, 4)).toEqual([
      "0 pieces",
      "0 pieces",
    ]);
  });
});
