import { describe, expect, it } from "vitest";
import { pairSpace, stockMinor } from "#lib/purchasing/plan/pair-space";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

describe("what a week's stock costs", () => {
  it("is holding and shortage, in the last week less its worth", () => {
    const supply = plainSupply("paper", [1], { wanted: [4], holdingMinor: 2, endValueMinor: 7 });
    // Six: 12 of holding, less 42 at the end. Two: 4 and two missing. Owing one: five missing, and 7 to make good.
    expect([6, 2, -1].map((stock) => stockMinor(supply, 0, false, stock))).toEqual([12, 204, 500]);
    expect([6, 2, -1].map((stock) => stockMinor(supply, 0, true, stock))).toEqual([-30, 190, 507]);
  });
});

describe("the space of a pair", () => {
  // Two saved do the work of one of paper; 3 of paper are used in the first week, none in the second.
  const question = plainQuestion({
    supplies: [
      plainSupply("saved", [0, 0], { stock: 4, holdingMinor: 5 }),
      plainSupply("paper", [3, 0], { wanted: [0, 1], holdingMinor: 2 }),
    ],
    suppliers: [plainSupplier("north", 2)],
    offers: [plainOffer("paper", "north", { unitsPerPack: 3 })],
    substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 2 }],
  });
  const [from, to] = planParts(question).supplies;
  if (from === undefined || to === undefined) throw new RangeError("two supplies");
  const space = pairSpace(from, to, 2, 2, 3);

  it("has cells up to all that can be moved, and sums that leave room for what is lent", () => {
    expect(space.most).toEqual([3, 0]);
    expect(space.width).toBeCloseTo(1, 9);
    expect([...space.from.levels]).toEqual([0]);
    // Need of four, and one order of two packs, and the sum above.
    expect([...space.to.levels]).toEqual([0, 3, 6, 9, 12]);
    expect(space.to.open).toBe(4);
  });

  it("costs in each cell what the best place in it costs", () => {
    const costs = space.costs[0];
    // Nothing ordered, m moved: 4 - 2m of saved held at 5 or owed at 100, 3 - m of paper owed at 100.
    const saved = (left: number) => (left > 0 ? 5 * left : -100 * left);
    const cost = (moved: number) => saved(4 - 2 * moved) + 100 * (3 - moved);
    for (const cell of [0, 1, 2]) {
      const places = Array.from({ length: 101 }, (_, step) => cost(cell + step / 100));
      expect(costs?.[cell]).toBeCloseTo(Math.min(...places), 6);
    }
  });
});
