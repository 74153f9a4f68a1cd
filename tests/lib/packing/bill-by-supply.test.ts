import { describe, expect, it } from "vitest";
import { billBySupply } from "#lib/packing/bill-by-supply";
import { cardSum } from "#lib/packing/card-sum";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amountFraction, amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const CENT = 10_000;
const step = (supplyId: string, amount = amountOfUnits(1), per: "piece" | "parcel" = "parcel") => ({
  id: `${supplyId}-${per}-${amount}`,
  position: 0,
  words: supplyId,
  supplyId,
  amount,
  typedValue: "",
  typedUnit: "",
  per,
});
const card: RecipeVersion = {
  id: "mug-1",
  itemTypeId: "mug",
  style: "paper",
  effectiveFrom: day("2026-01-01"),
  steps: [
    step("tissue", amountFraction(1, 3), "piece"),
    step("paper", amountOfUnits(2)),
    step("tape", amountOfUnits(7)),
    step("paper", amountOfUnits(1.5)),
    step("cube"),
  ],
  cartons: [{ upTo: 4, supplyId: "cube" }],
};
const terms = {
  masses: new Map([
    ["tissue", 3_000],
    ["paper", 27_200],
    ["cube", 197_000],
  ]),
  book: new Map([
    ["tissue", 3 * CENT],
    ["paper", 7 * CENT],
    ["cube", 80 * CENT],
  ]),
  replacement: new Map([["paper", 8 * CENT]]),
};

// Worked by hand: two pieces take 2/3 sheet of tissue; 2 + 1.5 sheets of paper weigh 3.5 x 27.2 g and cost 3.5 x 7 c;
// the same carton as a step and as the carton is two of it.
describe("a card's bill by supply", () => {
  const bill = billBySupply(card, 2, terms);

  it("adds up what several steps take of one supply, in the order of the card", () => {
    expect(bill.map(({ supplyId, amount }) => [supplyId, amount])).toEqual([
      ["tissue", amountFraction(2, 3)],
      ["paper", amountOfUnits(3.5)],
      ["tape", amountOfUnits(7)],
      ["cube", amountOfUnits(2)],
    ]);
  });

  it("weighs and prices each line, and names what is not known", () => {
    const [tissue, paper, tape] = bill;
    expect(tissue).toMatchObject({ mass: { mg: 2_000 }, book: { cost: 2 * CENT } });
    expect(tissue?.replacement).toEqual({ cost: 0, unknown: ["tissue"] });
    expect(paper).toMatchObject({ mass: { mg: 95_200 }, book: { cost: 24.5 * CENT } });
    expect(paper?.replacement.cost).toBe(28 * CENT);
    expect(tape?.mass).toEqual({ mg: 0, unknown: ["tape"] });
  });

  it("adds up to the sum of the card", () => {
    const sum = cardSum(card, 2, 0, terms);
    const all = (value: (line: (typeof bill)[number]) => number) =>
      bill.reduce((total, line) => total + value(line), 0);
    expect(all(({ mass }) => mass.mg)).toBe(sum.mass.mg);
    expect(all(({ book }) => book.cost)).toBe(sum.book.cost);
    expect(all(({ replacement }) => replacement.cost)).toBe(sum.replacement.cost);
    expect([...new Set(bill.flatMap(({ book }) => book.unknown))]).toEqual(sum.book.unknown);
  });
});
