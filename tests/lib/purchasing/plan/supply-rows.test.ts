import { describe, expect, it } from "vitest";
import { planModel } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

describe("rows of what each supply must cost", () => {
  it("have the least cost of the supply alone, its lines charged a share of the delivery", () => {
    // 4 a week in packs of 4 at 100, holding 1 a unit. Two packs, each in its week, cost 200 and two charges; both
    // at once 200, 4 for holding and one charge. Delivery 50: shares of 0, 5, 15 and 50.
    const question = plainQuestion({
      supplies: [plainSupply("paper", [4, 4], { shortMinor: 500 })],
      suppliers: [plainSupplier("north", 2, { deliveryMinor: 40, handlingMinor: 10 })],
      offers: [plainOffer("paper", "north", { unitsPerPack: 4 })],
    });
    const rows = planModel(question).model.rows.filter(({ name }) => name.startsWith("alone"));
    const least = [200, 204 + 5, 204 + 15, 204 + 50];
    expect(rows.map(({ lower }) => lower)).toEqual(least.map((minor) => expect.closeTo(minor, 3)));
    const orders = rows.map(({ terms }) =>
      terms.filter(([, name]) => name.startsWith("y")).map(([factor]) => factor),
    );
    expect(orders).toEqual([[], [5, 5], [15, 15], [50, 50]]);
  });

  it("are left out where another supply can stand in", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [4, 4]), plainSupply("saved", [0, 0], { stock: 3 })],
      suppliers: [plainSupplier("north", 2)],
      offers: [plainOffer("paper", "north", { unitsPerPack: 4 })],
      substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 }],
    });
    expect(planModel(question).model.rows.filter(({ name }) => name.startsWith("alone"))).toEqual([]);
  });
});
