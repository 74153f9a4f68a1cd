import { describe, expect, it } from "vitest";
import { coverAxis } from "#app/this-week/cover-axis.ts";
import { coverMarks } from "#app/this-week/cover-marks.ts";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { checkRow } from "./check-row-fixture";

describe("cover marks", () => {
  const axis = coverAxis(day("2026-11-25"), 1);

  it("reach solid to the careful day and fading to the likely one", () => {
    const { bar } = coverMarks(checkRow(), axis);
    expect(bar).toEqual({ careful: 20, likely: 30 });
  });

  it("draw no stock where it was never counted, and say so", () => {
    const marks = coverMarks(checkRow({ onHand: null, carefulRunOutDate: null, runOutDate: null }), axis);
    expect(marks.bar).toBeNull();
    expect(marks.words).toContain("never counted");
  });

  it("draw no stock where no use is known that it could last against, and say so", () => {
    const marks = coverMarks(checkRow({ usePerWeek: null, carefulRunOutDate: null, runOutDate: null }), axis);
    expect(marks.bar).toBeNull();
    expect(marks.words).toContain("no use known");
  });

  it("draw no stock where the book is at or below zero", () => {
    expect(coverMarks(checkRow({ onHand: amountOfUnits(-3) }), axis).bar).toBeNull();
  });

  it("end where stock is likely gone before a delivery, though the delivery lasts longer", () => {
    const row = checkRow({
      shortFrom: day("2026-12-02"),
      carefulRunOutDate: day("2027-01-10"),
      runOutDate: day("2027-01-20"),
      arrivals: [{ amount: amountOfUnits(300), expectedOn: day("2026-12-09") }],
    });
    const marks = coverMarks(row, axis);
    expect(marks.bar).toEqual({ careful: 10, likely: 10 });
    expect(marks.onTheWay).toEqual([{ percent: 20, words: "300 sq ft due 9 Dec" }]);
  });

  it("reach the end of the axis where no end of the stock is in sight", () => {
    expect(coverMarks(checkRow({ carefulRunOutDate: null, runOutDate: null }), axis).bar).toEqual({
      careful: 100,
      likely: 100,
    });
  });

  it("say in words what is drawn", () => {
    expect(coverMarks(checkRow(), axis).words).toBe(
      "Small bubble: lasts until 9 Dec by the careful estimate, likely until 16 Dec; an order placed today arrives 4 Dec.",
    );
  });
});
