import { parse } from "csv-parse/sync";
import { stringify } from "csv-stringify/sync";
import { describe, expect, it } from "vitest";
import { orderSheet, sheetText } from "#app/buying/order-sheet.ts";
import { sheetRows } from "#app/buying/sheet-rows.ts";
import { OFFER, order, orderLine, SHOP, units } from "./order-fixture";

const lines = [
  orderLine(),
  orderLine({
    id: "b",
    supply: "Tissue, white",
    unit: "sheet",
    pack: null,
    packAmount: units(480),
    offerId: null,
    packs: 2,
    priceMinor: null,
  }),
];

describe("order sheet", () => {
  it("sums lines and delivery, and says what the total leaves out", () => {
    const sheet = orderSheet(order({ lines }), new Map(), SHOP);
    expect(sheet).toMatchObject({
      head: "Ordered Mon 2 Mar 2026",
      goods: "$104.00",
      delivery: "$8.95",
      total: "$112.95",
      note: "The total leaves out: 1 line without a price.",
    });
    expect(sheet.lines[1]).toMatchObject({
      pack: "pack of 480 sheets",
      price: "not known",
      sum: "not known",
    });
  });

  it("takes the exact sum of steps that are for the packs from there on", () => {
    const steps = {
      ...OFFER,
      breakKind: "incremental" as const,
      breaks: [{ fromPacks: 3, priceMinor: 2_499 }],
    };
    // 2 × 26.00 and 2 × 24.99 = 101.98: 25.495 each, kept as 25.50.
    const sheet = orderSheet(
      order({ lines: [orderLine({ priceMinor: 2_550 })] }),
      new Map([["roll", steps]]),
      SHOP,
    );
    expect(sheet.goods).toBe("$101.98");
  });

  it("says in plain text what to order, without a person's name", () => {
    expect(sheetText(orderSheet(order({ status: "draft", deliveryMinor: null }), new Map(), SHOP))).toBe(
      [
        "Invented supplier",
        "Draft of Mon 2 Mar 2026",
        "",
        "4 × Small bubble, roll of 188 ft, at $26.00: $104.00",
        "",
        "Goods: $104.00",
        "Delivery: not known",
        "Total: $104.00",
        "The total leaves out: delivery.",
      ].join("\n"),
    );
  });

  it("is read back from CSV with its commas", () => {
    const rows = sheetRows(order({ lines }), new Map(), SHOP);
    const read: string[][] = parse(stringify(rows, { record_delimiter: "windows" }));
    expect(read).toEqual(rows);
    expect(read[2]).toEqual([
      "Invented supplier",
      "2026-03-02",
      "Tissue, white",
      "pack of 480 sheets",
      "2",
      "",
      "",
      "USD",
    ]);
    expect(read.at(-1)).toEqual(["Invented supplier", "2026-03-02", "total", "", "", "", "112.95", "USD"]);
  });
});
