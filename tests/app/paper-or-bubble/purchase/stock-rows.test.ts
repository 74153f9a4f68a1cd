import { describe, expect, it } from "vitest";
import { STOCK_COLUMNS, stockRows } from "#app/paper-or-bubble/purchase/stock-rows.ts";

describe("what becomes of each supply", () => {
  it("stands for each, what is bought first, in whole use units", () => {
    const stock = [
      { supplyId: "tape", onHand: 1_110, bought: 0, used: 761.8, left: 348.2 },
      { supplyId: "paper", onHand: 251, bought: 1_248, used: 1_103.84, left: 395.16 },
    ];
    const rows = stockRows(
      { stock },
      (id) => `Some ${id}`,
      (id, units) => `${units} of ${id}`,
    );
    expect(rows).toEqual([
      { name: "Some paper", cells: ["251 of paper", "1248 of paper", "1104 of paper", "395 of paper"] },
      { name: "Some tape", cells: ["1110 of tape", "0 of tape", "762 of tape", "348 of tape"] },
    ]);
    expect(rows[0]?.cells).toHaveLength(STOCK_COLUMNS.length);
  });
});
