import { describe, expect, it } from "vitest";
import { planModel } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";
import { brokenByPlan } from "./whole-model";

const question = plainQuestion({
  supplies: [plainSupply("paper", [5, 5], { most: [20, 8], stock: -1, litres: 2 })],
  suppliers: [plainSupplier("north", 2, { deliveryMinor: 60, freeFromMinor: 1000 })],
  offers: [plainOffer("paper", "north")],
  limits: { cash: [{ throughWeek: 0, minor: 700 }], litres: 18 },
});
const broken = (...packs: number[]) =>
  brokenByPlan(planModel(question), {
    lines: packs.map((count, week) => ({ offerId: "paper of north", week, packs: count })),
    standIns: [],
  }).broken;

describe("rows of the limits", () => {
  it("hold room, cash and most stock, each where it is exceeded", () => {
    // Stock after arrivals: 6 - 1 = 5, then 5 - 5 + 4 = 4.
    expect(broken(6, 4)).toEqual([]);
    // 7 packs are 700, and 60 for delivery.
    expect(broken(7, 0)).toEqual(["cash"]);
    // Nine left in the second week: 8 are allowed, and 9 litres twice are just in the room.
    expect(broken(6, 9)).toEqual(["most"]);
    expect(broken(6, 10)).toEqual(["most", "room"]);
  });
});
