import { describe, expect, it } from "vitest";
import { buyingFinding } from "#app/buying/buying-finding.ts";
import { expectedDeliveries, latenessWords, pastDeliveries } from "#app/buying/expected-deliveries.ts";
import { orderFinding } from "#app/buying/order-finding.ts";
import { day } from "#lib/units/day";
import type { OrderArrival } from "#prisma/records/purchase-orders";
import { order, orderLine, units } from "./order-fixture";

const today = day("2026-03-11");
const came = (on: string): OrderArrival => ({
  receiptId: on,
  receivedOn: day(on),
  packs: 1,
  packAmount: units(188),
  packTyped: "188 ft",
  priceMinor: 2_600,
  currency: "USD",
});
const open = (on: string) => ({ lineId: "line", packs: 3, expectedOn: day(on) });

describe("deliveries", () => {
  it("are expected by day, the earliest first, and are late from the day after", () => {
    const two = order({
      lines: [
        orderLine({ id: "a", open: open("2026-03-11") }),
        orderLine({ id: "b", open: open("2026-03-09") }),
      ],
    });
    const expected = expectedDeliveries([two, order({ lines: [orderLine({ open: null })] })], today);
    expect(expected.map(({ on, daysLate }) => [on, daysLate])).toEqual([
      ["2026-03-09", 2],
      ["2026-03-11", 0],
    ]);
  });

  it("that came are told against the day first expected, the latest first", () => {
    const parts = order({ lines: [orderLine({ arrivals: [came("2026-03-08"), came("2026-03-12")] })] });
    expect(pastDeliveries([parts]).map(({ on, daysLate }) => [on, daysLate])).toEqual([
      ["2026-03-12", 3],
      ["2026-03-08", -1],
    ]);
    expect([latenessWords(3), latenessWords(-1), latenessWords(0)]).toEqual([
      "3 days late",
      "1 day early",
      "on its day",
    ]);
  });
});

describe("what Buying finds", () => {
  it("names the delivery that is late and the drafts", () => {
    const expected = expectedDeliveries([order()], today);
    expect(buyingFinding(expected, 2)).toBe(
      "One order is on its way; Small bubble from Invented supplier is 2 days late. 2 drafts are not placed yet.",
    );
    expect(buyingFinding(expectedDeliveries([order()], day("2026-03-05")), 0)).toBe(
      "One order is on its way, the next due Mon 9 Mar.",
    );
    expect(buyingFinding([], 0)).toBe("Nothing is on order.");
  });

  it("says of one order how far it is", () => {
    expect(orderFinding(order({ placedAt: "15:30" }), day("2026-03-05"))).toBe(
      "Ordered from Invented supplier on Mon 2 Mar at 15:30, expected Mon 9 Mar.",
    );
    const partly = order({
      status: "partly received",
      lines: [orderLine({ open: open("2026-03-09"), arrivals: [came("2026-03-08")] })],
    });
    expect(orderFinding(partly, today)).toBe(
      "Ordered from Invented supplier on Mon 2 Mar: part of it came, the rest is 2 days late, due Mon 9 Mar.",
    );
    const all = order({
      status: "received",
      lines: [orderLine({ open: null, arrivals: [came("2026-03-08")] })],
    });
    expect(orderFinding(all, today)).toBe(
      "Ordered from Invented supplier on Mon 2 Mar: it came Sun 8 Mar, 1 day early.",
    );
  });
});
