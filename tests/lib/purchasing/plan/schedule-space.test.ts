import { describe, expect, it } from "vitest";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { openWorth, scheduleSpace } from "#lib/purchasing/plan/schedule-space";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

function space(use: number[], changes: object, offers: { unitsPerPack: number }[], spared: number[] = []) {
  const question = plainQuestion({
    supplies: [plainSupply("paper", use, changes)],
    suppliers: [plainSupplier("north", use.length)],
    offers: offers.map((offer, index) => plainOffer("paper", "north", { id: `offer ${index}`, ...offer })),
  });
  const [of] = planParts(question).supplies;
  if (of === undefined) throw new RangeError("one supply");
  return scheduleSpace(of, use.length, spared, "closed");
}

describe("the space of one supply's orders", () => {
  it("holds every sum of packs that the most stock allows, and what each costs in stock", () => {
    const { levels, costs } = space([4, 4], { wanted: [1, 1], most: [9, 9] }, [
      { unitsPerPack: 2 },
      { unitsPerPack: 5 },
    ]);
    // After a first order of at most 9 a second one may come on top, up to 9 above the use of the first week.
    expect([...levels]).toEqual([0, 2, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13]);
    // Nothing ordered: 5 below the wanted stock, then 9. Eight: 4 left, then none, 1 wanted.
    expect([costs[0]?.[0], costs[1]?.[0]]).toEqual([500, 900]);
    expect([costs[0]?.[6], costs[1]?.[6]]).toEqual([4, 100]);
    expect(costs[0]?.[8]).toBe(Number.POSITIVE_INFINITY);
  });

  it("knows what stand-ins spare", () => {
    const { after, costs } = space([4, 4], {}, [{ unitsPerPack: 4 }], [3, 0]);
    expect([...after]).toEqual([0, -1]);
    expect(costs[0]?.[0]).toBe(100);
  });

  it("holds open what lies above need and largest order, for a bound", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [2, 2], { endValueMinor: 30, most: [9, 9] })],
      suppliers: [plainSupplier("north", 2)],
      offers: [plainOffer("paper", "north", { unitsPerPack: 2, mostPacks: 1 })],
    });
    const [of] = planParts(question).supplies;
    if (of === undefined) throw new RangeError("one supply");
    const closed = scheduleSpace(of, 2, [], "closed");
    const open = scheduleSpace(of, 2, [], "open");
    // Four needed, two in an order; up to 9 above the use of the first week are allowed.
    expect([[...closed.levels], closed.open]).toEqual([[0, 2, 4, 6], -1]);
    expect([[...open.levels], open.open]).toEqual([[0, 2, 4, 6, 8], 4]);
    const next = [...(open.slots[0]?.[0]?.next ?? [])];
    expect(next).toEqual([1, 2, 3, 4, 4]);
    // Two more from the open level are worth 60 at the end; two more that just reach it are in its own cost.
    expect([openWorth(open, 4, 2), openWorth(open, 3, 2)]).toEqual([60, 0]);
  });

  it("looks at bundles where single packs would make too many sums", () => {
    const { levels, slots } = space([3000], {}, [{ unitsPerPack: 1 }]);
    expect(levels.length).toBeLessThanOrEqual(400);
    expect(levels.at(-1)).toBeGreaterThanOrEqual(3000);
    expect(slots[0]?.[0]?.bundle).toBe(16);
  });
});
