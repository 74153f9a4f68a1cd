import { describe, expect, it } from "vitest";
import { handedForm, orderField } from "#app/paper-or-bubble/purchase/handed-orders.ts";

const KEY = "0b8f6c1e-3c55-4a54-9a0e-6a0c9b1f2d11";

describe("the orders that a plan hands over", () => {
  it("come back from the field as they were put in", () => {
    const orders = [
      { lines: [{ offerId: "demo-paper-tissue", packs: 4 }] },
      { lines: [{ offerId: "roll of 188 ft", packs: 12 }] },
    ];
    expect(handedForm.parse({ key: KEY, order: orderField(orders) }).order).toEqual([
      { offerId: "demo-paper-tissue", packs: 4 },
      { offerId: "roll of 188 ft", packs: 12 },
    ]);
  });

  it.each(["", "0 roll", "-1 roll", "2", "two roll", "1.5 roll", "99999 roll"])("refuse “%s”", (order) => {
    expect(handedForm.safeParse({ key: KEY, order }).success).toBe(false);
  });

  it("need the plan's own key", () => {
    expect(handedForm.safeParse({ order: "1 roll" }).success).toBe(false);
    expect(handedForm.safeParse({ key: "mine", order: "1 roll" }).success).toBe(false);
  });
});
