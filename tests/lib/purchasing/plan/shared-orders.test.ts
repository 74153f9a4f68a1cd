import { describe, expect, it } from "vitest";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { sharedOrders } from "#lib/purchasing/plan/shared-orders";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

describe("orders that could be placed", () => {
  it("hold every line of their supplier and week, and know the cash limits they count under", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [1, 1]), plainSupply("tape", [1, 1])],
      suppliers: [
        plainSupplier("north", 2, { deliveryMinor: 5, freeFromMinor: 70 }),
        plainSupplier("south", 2, { freeFromMinor: 70, orderWeeks: [true, false] }),
      ],
      offers: [plainOffer("paper", "north"), plainOffer("tape", "north"), plainOffer("tape", "south")],
      limits: {
        cash: [
          { throughWeek: 0, minor: 9 },
          { throughWeek: 1, minor: 99 },
        ],
        litres: null,
      },
    });
    const orders = sharedOrders(question, planParts(question).slots);
    const told = orders.map(({ supplier, week, slots, freeFrom, cash }) => ({
      at: `${supplier.id} ${week}`,
      lines: slots.map(({ supply }) => supply.id),
      freeFrom,
      cash,
    }));
    // Delivery that costs nothing is never freed.
    expect(told.toSorted((a, b) => a.at.localeCompare(b.at))).toEqual([
      { at: "north 0", lines: ["paper", "tape"], freeFrom: 70, cash: [0, 1] },
      { at: "north 1", lines: ["paper", "tape"], freeFrom: 70, cash: [1] },
      { at: "south 0", lines: ["tape"], freeFrom: null, cash: [0, 1] },
    ]);
  });
});
