import { describe, expect, it } from "vitest";
import { buyingEvents } from "#app/buying/buying-events.ts";
import { day } from "#lib/units/day";
import { checkRow } from "../this-week/check-row-fixture";
import { BUBBLE, units } from "./order-fixture";

const openLine = {
  id: "line-rest",
  purchaseId: "order",
  supplierId: "north",
  supplierName: "Invented supplier",
  placedOn: "2026-03-02",
  supplyId: "bubble",
  offerId: null,
  packs: 2,
  packAmount: units(188),
  priceMinor: null,
  expectedOn: "2026-03-16",
};
const supplies = new Map([["bubble", BUBBLE]]);
const today = day("2026-03-11");

describe("the days of buying for a calendar", () => {
  it("have the day to order by, today where it is urgent, and none where nothing is asked", () => {
    const rows = [
      checkRow({ supplyId: "a", supply: "Tissue", action: "order-today", orderByDate: day("2026-03-09") }),
      checkRow({ supplyId: "b", supply: "Paper", action: "order-later", orderByDate: day("2026-04-01") }),
      checkRow({ supplyId: "c", supply: "Tape", action: "enough", orderByDate: day("2026-05-01") }),
    ];
    const events = buyingEvents({ check: { day: today, rows }, openLines: [], supplies });
    expect(events.map(({ uid, on, summary }) => [uid, on, summary])).toEqual([
      ["order-by-a@wadding", "2026-03-11", "Order Tissue"],
      ["order-by-b@wadding", "2026-04-01", "Order Paper"],
    ]);
  });

  it("keep the event of a line for the rest of it", () => {
    const whole = { ...openLine, id: "line" };
    const events = [openLine, whole].flatMap((line) =>
      buyingEvents({ check: { day: today, rows: [] }, openLines: [line], supplies }),
    );
    expect(events.map((event) => event.uid)).toEqual(["delivery-line@wadding", "delivery-line@wadding"]);
    expect(events[0]).toMatchObject({
      on: "2026-03-16",
      summary: "Small bubble expected from Invented supplier",
      description: "2 packs, 376 ft. Ordered 2026-03-02.",
    });
  });
});
