import { describe, expect, it } from "vitest";
import { byAsSpent, byTotal, pricedCartons } from "#lib/cartons/choice/priced-carton";
import { carton, MUG, MUG_TERMS } from "./mug-bench";

const ids = (priced: ReturnType<typeof pricedCartons>) => priced.map(({ carton: each }) => each.id);

describe("cartons with what a load costs in them", () => {
  it("leave out those with too little room", () => {
    const cartons = [carton("cube-5", [5, 5, 5], 10), carton("cube-8", [8, 8, 8], 80)];
    expect(ids(pricedCartons(MUG, cartons, MUG_TERMS))).toEqual(["cube-8"]);
  });

  it("stand by their total; among equals one to use up, then a saved one, then by name", () => {
    const same = (id: string, more = {}) => carton(id, [8, 8, 8], 80, more);
    const cartons = [
      same("b"),
      same("a"),
      same("saved", { isSaved: true }),
      same("sits", { ageing: "sits" }),
      carton("cheap", [8, 8, 8], 20),
    ];
    const sorted = pricedCartons(MUG, cartons, MUG_TERMS).toSorted(byTotal);
    expect(ids(sorted)).toEqual(["cheap", "sits", "saved", "a", "b"]);
    expect(ids(sorted.toSorted(byAsSpent))).toEqual(["sits", "cheap", "saved", "a", "b"]);
  });

  it("stand behind where no postage is known, whatever they cost", () => {
    const terms = { ...MUG_TERMS, postage: (massMg: number) => (massMg > 1_000_000 ? 800 : null) };
    const cartons = [carton("cube-8", [8, 8, 8], 80), carton("cube-10", [10, 10, 10], 100)];
    expect(ids(pricedCartons(MUG, cartons, terms).toSorted(byTotal))).toEqual(["cube-10", "cube-8"]);
  });
});
