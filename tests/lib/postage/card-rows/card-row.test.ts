import { describe, expect, it } from "vitest";
import { CARD_COLUMNS, NO_PRICE_MARK } from "#lib/postage/card-rows/card-row";
import { groupedRows } from "#lib/postage/card-rows/grouped-rows";
import { zonePrices } from "#lib/postage/zone-prices";

describe("the marks of a file of cards", () => {
  it("are read as what they stand for", () => {
    const head = { line: 1, cells: [...CARD_COLUMNS, "Near"] };
    expect(groupedRows([head]).heads).toEqual([{ line: 1, zones: ["Near"] }]);
    expect(zonePrices([NO_PRICE_MARK], ["Near"], { minorDigits: 2, blanks: "refused" })).toEqual({
      prices: [null],
    });
  });

  it("are none that a spreadsheet takes for the beginning of a formula", () => {
    expect(/^[=+\-@]/.test(NO_PRICE_MARK)).toBe(false);
  });
});
