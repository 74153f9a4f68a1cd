import { describe, expect, it } from "vitest";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import * as bench from "../bench-shop";

const shelf = [
  bench.kraft,
  bench.tissue,
  bench.paper,
  bench.smallBubble,
  bench.largeBubble,
  bench.card,
  bench.householdTape,
  bench.cartonTape,
];
const ids = (...chosen: Parameters<typeof chosenSupplies>) =>
  Object.fromEntries(
    Object.entries(chosenSupplies(...chosen)).map(([job, supply]) => [job, supply?.supplyId]),
  );

// Common practice, no source.
describe("chosenSupplies", () => {
  it("wraps and fills with paper on paper", () => {
    expect(ids("paper", shelf)).toMatchObject({ surface: "tissue", cushion: "paper", fill: "paper" });
    expect(ids("paper", shelf).outer).toBeUndefined();
  });

  it("wraps and fills with bubble on bubble, and binds it with kraft where there is any", () => {
    expect(ids("bubble", shelf)).toMatchObject({
      guard: "small-bubble",
      cushion: "small-bubble",
      fill: "large-bubble",
      outer: "kraft",
    });
  });

  it("wraps in bubble and fills with paper when mixed", () => {
    expect(ids("mixed", shelf)).toMatchObject({
      cushion: "small-bubble",
      fill: "paper",
      seal: "carton-tape",
    });
  });

  it("takes the next best material where the best is not there, and leaves a job open where none is", () => {
    expect(ids("bubble", [bench.largeBubble])).toMatchObject({
      cushion: "large-bubble",
      fill: "large-bubble",
    });
    expect(Object.values(chosenSupplies("paper", []))).toEqual(Array.from({ length: 9 }, () => null));
  });
});
