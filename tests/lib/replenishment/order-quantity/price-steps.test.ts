import { describe, expect, it } from "vitest";
import { checkSteps, goodsCost } from "#lib/replenishment/order-quantity/price-steps";

const steps = [
  { from: 0, price: 5 },
  { from: 4, price: 4 },
  { from: 10, price: 3 },
];

describe("price steps", () => {
  it("hold for all units from the step on", () => {
    const cost = (lot: number) => goodsCost({ steps, pricing: "all-units" }, lot);
    expect([0, 3, 4, 9.5, 10, 20].map(cost)).toEqual([0, 15, 16, 38, 30, 60]);
  });

  it("hold for the units within the step", () => {
    const cost = (lot: number) => goodsCost({ steps, pricing: "incremental" }, lot);
    // 4 at 5, 6 at 4, the rest at 3.
    expect([0, 3, 4, 5, 10, 20].map(cost)).toEqual([0, 15, 20, 24, 44, 74]);
  });

  it("begin at 0 and rise", () => {
    expect(() => checkSteps({ steps: [], pricing: "all-units" })).toThrow(/first step from 0/);
    expect(() => goodsCost({ steps: [{ from: 1, price: 1 }], pricing: "all-units" }, 1)).toThrow(/got 1/);
    const twice = [
      { from: 0, price: 1 },
      { from: 0, price: 2 },
    ];
    expect(() => checkSteps({ steps: twice, pricing: "incremental" })).toThrow(/rising steps/);
    expect(() => checkSteps({ steps: [{ from: 0, price: -1 }], pricing: "all-units" })).toThrow(
      /got -1 from 0/,
    );
  });
});
