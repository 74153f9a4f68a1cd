import { describe, expect, it } from "vitest";
import { yearlyTotal } from "#lib/replenishment/order-quantity/order-costs";
import { mostPacksByLimit } from "#lib/replenishment/order-quantity/order-limits";
import type { OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";
import { sizesToTry } from "#lib/replenishment/order-quantity/order-sizes";
import { orderTerms } from "./order-terms";

const sizes = (changes: Partial<OrderPacksQuestion>) => {
  const question = orderTerms(changes);
  return sizesToTry(question, mostPacksByLimit(question));
};

const steps = [
  { from: 0, price: 2000 },
  { from: 4, price: 1900 },
  { from: 40, price: 1500 },
];

describe("sizes to try", () => {
  it.each([
    ["one price", {}],
    ["all-units breaks", { prices: { steps, pricing: "all-units" as const } }],
    ["incremental breaks", { prices: { steps, pricing: "incremental" as const } }],
    ["free delivery from afar", { delivery: { charge: 9000, freeFrom: 150_000 } }],
    ["a least value", { leastValue: 70_000 }],
  ])("end where the cost only rises: %s", (_, changes) => {
    const question = orderTerms(changes);
    const last = sizes(changes);
    const later = Array.from({ length: 500 }, (__, index) => yearlyTotal(question, last + index));
    expect(later).toEqual(later.toSorted((a, b) => a - b));
  });

  it("reach every least size and value", () => {
    expect(sizes({ leastPacks: 300 })).toBeGreaterThanOrEqual(300);
    expect(sizes({ leastValue: 70_000 })).toBeGreaterThanOrEqual(35);
  });

  it("go one beyond the limits where holding costs nothing, or end at once where orders cost nothing", () => {
    expect(sizes({ holdingShare: 0, mostPacks: 30 })).toBe(31);
    expect(sizes({ holdingShare: 0, cash: 10_000 })).toBe(6);
    expect(sizes({ holdingShare: 0, delivery: { charge: 0, freeFrom: null } })).toBe(2);
    expect(() => sizes({ holdingShare: 0 })).toThrow(/a limit where holding costs nothing/);
  });

  it("are not millions", () => {
    expect(() => sizes({ packAmount: 1e-12 })).toThrow(/at most 1000000 are bought/);
  });
});
