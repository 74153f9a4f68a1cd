import { describe, expect, it } from "vitest";
import { mostStandIn, supplyReach } from "#lib/purchasing/plan/supply-reach";
import { plainQuestion, plainSupply } from "./small-question";

describe("how far a supply reaches without orders", () => {
  const paper = plainSupply("paper", [3, 4, 5], {
    stock: 5,
    arrivals: [0, 6, 0],
    wanted: [1, 1, 2],
    most: [4, 4, 20],
  });
  const saved = plainSupply("saved", [1, 0, 0], { stock: 9 });
  const substitutes = [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 2 }];
  const question = plainQuestion({ supplies: [paper, saved], suppliers: [], offers: [], substitutes });

  it("follows stock, arrivals and use by hand", () => {
    const reach = supplyReach(question, paper);
    expect(reach.after).toEqual([5, 8, 4]);
    expect(reach.end).toEqual([2, 4, -1]);
    // What is there already is never too much.
    expect(reach.allowed).toEqual([5, 8, 20]);
    expect(reach.needed).toEqual([3, 3, 3]);
  });

  it("counts what could have stood in for another supply", () => {
    const reach = supplyReach(question, saved);
    expect(reach.lent).toEqual([6, 14, 24]);
    expect(reach.least).toEqual([9, 2, -6]);
  });

  it("lets the first week make up for what was owed at the start", () => {
    expect(mostStandIn({ ...paper, stock: -2 }, 0)).toBe(5);
    expect(mostStandIn({ ...paper, stock: -2 }, 1)).toBe(4);
  });
});
