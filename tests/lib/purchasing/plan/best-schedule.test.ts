import { describe, expect, it } from "vitest";
import { bestSchedule } from "#lib/purchasing/plan/best-schedule";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { scheduleSpace } from "#lib/purchasing/plan/schedule-space";
import { everyPlan } from "./every-plan";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

describe("the cheapest orders of one supply", () => {
  it("are those of ww-006 (data/purchase-plan-cases.json of the reference tests): 30, 0, 30, 40 for 110", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [10, 20, 30, 40], { shortMinor: 1e6 })],
      suppliers: [plainSupplier("north", 4)],
      offers: [plainOffer("paper", "north", { steps: [{ fromPacks: 1, priceMinor: 0 }] })],
    });
    const { supplies, slots } = planParts(question);
    const [of] = supplies;
    if (of === undefined) throw new RangeError("one supply");
    const schedule = bestSchedule(scheduleSpace(of, 4, [], "closed"), {
      slotMinor: () => 30,
      roomMinor: () => 0,
    });
    expect(schedule.minor).toBe(110);
    expect([...schedule.packs].map(([number, packs]) => [slots[number]?.week, packs]).toSorted()).toEqual([
      [0, 30],
      [2, 30],
      [3, 40],
    ]);
  });

  it("cost as little as the best of all plans where one supply stands alone", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const whole = smallQuestion(seed * 3 + 1);
      const supplies = whole.supplies.slice(1, 2);
      const offers = whole.offers.filter(({ supplyId }) => supplyId === supplies[0]?.id);
      const suppliers = whole.suppliers.map((each) => ({
        ...each,
        leastOrderMinor: null,
        freeFromMinor: null,
      }));
      const question = { ...whole, supplies, offers, suppliers, limits: { cash: [], litres: null } };
      const [of] = planParts(question).supplies;
      if (of === undefined) throw new RangeError("one supply");
      for (const kind of ["closed", "open"] as const) {
        const { minor } = bestSchedule(scheduleSpace(of, question.weeks, [], kind), {
          slotMinor: ({ slot }, goods) => goods + slot.supplier.deliveryMinor + slot.supplier.handlingMinor,
          roomMinor: () => 0,
        });
        expect(minor).toBeCloseTo(everyPlan(question)?.cost ?? Number.NaN, 6);
      }
    }
  });
});
