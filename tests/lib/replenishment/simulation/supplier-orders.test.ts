import { describe, expect, it } from "vitest";
import { supplierOrders } from "#lib/replenishment/simulation/supplier-orders";

const offer = (offerId: string, supplierId: string, price: number) => ({
  offerId,
  supplyId: offerId,
  supplierId,
  packAmount: 10,
  prices: { steps: [{ from: 0, price }], pricing: "all-units" as const },
});
const supplier = (supplierId: string, freeFrom: number | null, leastValue: number | null) => ({
  supplierId,
  leadTimes: [{ days: 3, chance: 1 }],
  delivery: { charge: 7, freeFrom },
  leastValue,
});
const setting = {
  suppliers: [supplier("one", 50, null), supplier("two", null, 30)],
  offers: [offer("paper", "one", 20), offer("tape", "two", 15), offer("bubble", "one", 5)],
};

describe("orders of a check", () => {
  it("are one for each supplier, with all its lines and one delivery", () => {
    const orders = supplierOrders(setting, [
      { offerId: "paper", packs: 1 },
      { offerId: "tape", packs: 2 },
      { offerId: "bubble", packs: 3 },
    ]);
    expect(
      orders.map(({ supplier: { supplierId }, goods, delivery }) => [supplierId, goods, delivery]),
    ).toEqual([
      ["one", 35, 7],
      ["two", 30, 7],
    ]);
    expect(orders[0]?.lines.map(({ offer: { offerId }, packs, goods }) => [offerId, packs, goods])).toEqual([
      ["paper", 1, 20],
      ["bubble", 3, 15],
    ]);
  });

  it("come free from a value on", () => {
    expect(supplierOrders(setting, [{ offerId: "bubble", packs: 10 }])[0]?.delivery).toBe(0);
    expect(supplierOrders(setting, [])).toEqual([]);
  });

  it("do not bend a supplier's terms", () => {
    const line = (offerId: string, packs: number) => [{ offerId, packs }];
    expect(() => supplierOrders(setting, line("tape", 1))).toThrow(/goods of 30 from two, got 15/);
    expect(() => supplierOrders(setting, line("string", 1))).toThrow(/known offer, got string/);
    expect(() => supplierOrders(setting, line("paper", 1.5))).toThrow(/packs from 1 of paper, got 1.5/);
    expect(() => supplierOrders(setting, [...line("paper", 1), ...line("paper", 2)])).toThrow(
      /got paper twice/,
    );
  });
});
