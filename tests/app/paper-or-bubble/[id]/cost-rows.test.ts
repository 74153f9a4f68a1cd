import { describe, expect, it } from "vitest";
import { billRows, costRows } from "#app/paper-or-bubble/[id]/cost-rows.ts";
import { type WayTerms, wayCost } from "#lib/cushioning/way-cost";
import { BUBBLE, PAPER, plainCost, TERMS, wayOf } from "../../../lib/cushioning/small-ways";
import { DOLLARS } from "../../cartons/small-shelf";

const NAMES = new Map([
  ["carton", "Carton 8 × 8 × 8"],
  ["outer", "Carton 12 × 12 × 12"],
  ["near", "Near"],
]);
const METRIC = { ...DOLLARS, measures: "metric" } as const;
const costs = (change: Partial<WayTerms> = {}, value: number | null = null) =>
  [PAPER, BUBBLE].map((way) => wayCost(way, { ...TERMS, ...change }, value));
const rows = (ways = costs()) =>
  new Map(costRows(ways, NAMES, METRIC).map(({ name, cells }) => [name, cells]));

describe("the ways side by side", () => {
  it("tell what each part is in each way", () => {
    const told = rows();
    expect(told.get("Carton")).toEqual(["Carton 8 × 8 × 8", "Carton 8 × 8 × 8"]);
    expect(told.get("Packing by the card weighs")).toEqual(["300 g", "300 g"]);
    // 2 lb = 907.2 g, and 40 g over or 80 g under it; nine in ten stay under 1.2816 x 40 g = 51 g more (normal table)
    expect(told.get("The parcel weighs, likely")).toEqual(["947 g", "827 g"]);
    expect(told.get("9 in 10 stay under")).toEqual(["998 g", "878 g"]);
    expect(told.get("Materials, at their cost in the books")).toEqual(["$1.60", "$1.70"]);
    expect(told.get("Materials, bought again")).toEqual(["$1.80", "$2.00"]);
    // 1,075 - 250 x 0.1587 and 1,075 - 250 x 0.9772
    expect(told.get("Postage, expected")).toEqual(["$10.35", "$8.31"]);
    expect(told.get("   to Near")).toEqual(["$8.68", "$7.05"]);
    expect(told.get("   to far")).toEqual(["$15.37", "$12.09"]);
    expect(told.get("All together, bought again")).toEqual(["$12.15", "$10.31"]);
    expect(told.get("Paper and board, of the packing’s weight")).toEqual(["100 %", "86 %"]);
  });

  it("mark the sum, and nothing else", () => {
    const sums = costRows(costs(), NAMES, METRIC).filter(({ isSum }) => isSum === true);
    expect(sums.map(({ name }) => name)).toEqual(["All together, bought again"]);
  });

  it("leave out what nobody counts", () => {
    const names = [...rows().keys()];
    for (const name of ["Your time", "What breaks, expected", "Room that its supplies take on the shelf"]) {
      expect(names).not.toContain(name);
    }
    expect([...rows(costs({ card: null })).keys()].some((name) => /Postage|ear|far/.test(name))).toBe(false);
  });

  it("say that it is not known where it is counted for another way", () => {
    const minutes = { paper: 5, bubble: null, mixed: null };
    const brokenPerMille = { paper: null, bubble: 10, mixed: null };
    const told = rows(costs({ minutes, hourMinor: 2_400, brokenPerMille }, 5_000));
    expect(told.get("Your time")).toEqual(["$2.00", "not known"]);
    // 1 in 100 of 50.00 and twice 8.31
    expect(told.get("What breaks, expected")).toEqual(["not known", "$0.67"]);
    const unweighed = [wayCost({ ...PAPER, weight: null }, TERMS, null), ...costs().slice(1)];
    expect(rows(unweighed).get("Postage, expected")).toEqual(["not known", "$8.31"]);
    expect(rows(unweighed).get("The parcel weighs, likely")).toEqual(["not known", "827 g"]);
    expect(rows(unweighed).get("   to Near")).toEqual(["not known", "$7.05"]);
  });

  it("have no row a zone where the card has one alone", () => {
    const one = rows(costs({ zones: [{ zone: "near", share: 1 }] }));
    expect(one.has("   to Near")).toBe(false);
    expect(one.get("Postage, expected")).toEqual(["$8.68", "$7.05"]);
  });

  it("name a box in a box, and a card without a carton", () => {
    const double = wayCost({ ...PAPER, cartons: ["outer", "carton"] }, TERMS, null);
    const none = wayCost({ ...BUBBLE, cartons: [] }, TERMS, null);
    expect(rows([double, none]).get("Carton")).toEqual([
      "Carton 12 × 12 × 12 in Carton 8 × 8 × 8",
      "none named",
    ]);
  });
});

describe("what each way takes", () => {
  const supplyOf = (id: string) => ({ name: `Some ${id}`, amount: (units: number) => `${units} of it` });
  const bill = (prices = TERMS.replacement) => billRows(costs(), prices, supplyOf, DOLLARS);

  it("is told by supply with its price, those that differ first, and adds up to the materials", () => {
    expect(bill()).toEqual([
      { name: "Some sheets, $0.08", cells: ["10 of it = $0.80", "none"] },
      { name: "Some bubble, $0.25", cells: ["none", "4 of it = $1.00"] },
      { name: "Some carton, $1.00", cells: ["1 of it = $1.00", "1 of it = $1.00"] },
    ]);
  });

  it("has no sum where there is no price", () => {
    const [sheets] = bill(new Map([["sheets", null]]));
    expect(sheets).toEqual({ name: "Some sheets, no price", cells: ["10 of it", "none"] });
  });

  it("differs where one way takes more of the same", () => {
    const ways = [
      plainCost("paper", 1, { tape: 6 }),
      { ...plainCost("bubble", 1), way: wayOf("bubble", { tape: 7 }) },
    ];
    expect(billRows(ways, new Map(), supplyOf, DOLLARS)[0]?.cells).toEqual(["6 of it", "7 of it"]);
  });
});
