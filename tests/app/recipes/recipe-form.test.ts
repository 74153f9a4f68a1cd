import { describe, expect, it } from "vitest";
import { readRecipe } from "#app/recipes/recipe-form.ts";
import { amountFraction, amountOfUnits } from "#lib/units/amount";
import { CARD_TERMS, TYPED_CARD } from "./card-terms";

const read = (change: Readonly<Record<string, string>> = {}) =>
  readRecipe({ ...TYPED_CARD, ...change }, CARD_TERMS);
const problems = (change: Readonly<Record<string, string>>) => {
  const reading = read(change);
  return reading.kind === "refused" ? reading.problems : {};
};

describe("the form of a card", () => {
  it("is read with what was typed, without its empty rows", () => {
    const step = { words: "Wrap it", supplyId: "tissue", typedValue: "1 1/3", typedUnit: "sheets" };
    expect(read()).toMatchObject({
      kind: "recipe",
      note: null,
      mass: { mg: 370_000, typed: "370 g" },
      steps: [
        { ...step, amount: amountFraction(4, 3), per: "piece", position: 0 },
        { supplyId: "paper", amount: amountOfUnits(7), per: "parcel", position: 1 },
      ],
      cartons: [{ upTo: 1, supplyId: "cube-8" }],
    });
  });

  it("takes steps by their place, and an inner carton as a step", () => {
    const change = { "place.1": "0", "words.2": "Stand it in", "supplyId.2": "cube-8", "amount.2": "1" };
    const reading = read(change);
    expect(reading.kind === "recipe" ? reading.steps.map(({ supplyId }) => supplyId) : []).toEqual([
      "paper",
      "tissue",
      "cube-8",
    ]);
  });

  it("may do without a carton and without a bare weight", () => {
    const { "upTo.0": _upTo, mass: _mass, ...without } = TYPED_CARD;
    expect(readRecipe(without, CARD_TERMS)).toMatchObject({ kind: "recipe", cartons: [], mass: null });
  });

  it.each([
    [{ "amount.1": "plenty" }, "amount.1", /“plenty” can’t be read/],
    [{ "amount.1": "3 ft" }, "amount.1", /“3 ft” can’t be read/],
    [{ "amount.1": "0" }, "amount.1", /above zero/],
    [{ "supplyId.1": "old-paper" }, "supplyId.1", /“Old paper” is no longer used.*under Supplies/],
    [{ "supplyId.1": "gone" }, "supplyId.1", /Choose a supply of the list/],
    [{ "cartonId.0": "old-cube" }, "cartonId.0", /“Old carton” is no longer used/],
    [{ "cartonId.0": "paper" }, "cartonId.0", /Choose a carton of the list/],
    [{ "words.2": "Close it" }, "amount.2", /Write an amount/],
    [{ "amount.2": "1" }, "words.2", /Say what is done/],
    [{ mass: "0 g" }, "mass", /above zero/],
    [{ mass: "heavy" }, "mass", /“heavy” can’t be read/],
  ])("is refused beside the field: %o", (change, field, words) => {
    expect(problems(change)[field]).toMatch(words);
  });

  it("names the rows to mend at its head", () => {
    expect(problems({ "amount.1": "plenty", "words.2": "Close it", "cartonId.0": "old-cube" })[""]).toBe(
      "Not saved. Mend row 2, row 3, carton row 1; all that was typed is kept.",
    );
  });
});
