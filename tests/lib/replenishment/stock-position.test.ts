import { describe, expect, it } from "vitest";
import { stockPosition } from "#lib/replenishment/stock-position";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const due = { amount: amountOfUnits(500), expectedOn: day("2026-12-01") };

describe("position", () => {
  it("is on hand and what comes by the day", () => {
    expect(stockPosition(amountOfUnits(174), [due], day("2026-12-01"))).toBe(amountOfUnits(674));
    expect(stockPosition(amountOfUnits(174), [due], day("2026-11-30"))).toBe(amountOfUnits(174));
  });

  it("is not known for a supply never counted", () => {
    expect(stockPosition(null, [due], day("2026-12-01"))).toBeNull();
  });
});
