import { describe, expect, it } from "vitest";
import { addDays, day } from "#lib/units/day";
import { itemTypePacking } from "#prisma/records/item-type-packing";
import { FIRST_MONDAY, packed, recipe, rows } from "./forecast-rows-fixture";

const UNTIL = day("2026-11-23");

describe("how an item type is packed lately", () => {
  it("spreads what is taken once a parcel over the pieces", () => {
    // 2 parcels with 3 pieces: two thirds of 2 feet of tape, two thirds of a carton.
    const { bill } = itemTypePacking(rows(), "mug", UNTIL);
    expect(bill.get("paper")).toBe(10);
    expect(bill.get("tape")).toBeCloseTo(4 / 3, 12);
    expect(bill.get("carton-8")).toBeCloseTo(2 / 3, 12);
  });

  it("weighs styles by their pieces of the last 8 weeks with parcels", () => {
    const recipes = [
      recipe("paper", { piece: { paper: 10 } }),
      recipe("bubble", { style: "bubble", piece: { bubble: 6 } }),
    ];
    const both = rows().packed.map((row, week) => ({ ...row, style: week % 2 === 0 ? "paper" : "bubble" }));
    const { bill, styles } = itemTypePacking(rows({ recipes, packed: both }), "mug", UNTIL);
    expect([...styles].sort()).toEqual(["bubble", "paper"]);
    expect((bill.get("paper") ?? 0) / 10 + (bill.get("bubble") ?? 0) / 6).toBeCloseTo(1, 12);
    const old = rows().packed.map((row, week) => ({ ...row, style: week < 2 ? "bubble" : "paper" }));
    expect([...itemTypePacking(rows({ recipes, packed: old }), "mug", UNTIL).styles]).toEqual(["paper"]);
  });

  it("takes the shop's usual style and the smallest carton before anything was packed", () => {
    const recipes = [
      recipe("bubble", { style: "bubble", piece: { bubble: 6 } }),
      recipe("paper", {
        piece: { paper: 10 },
        cartons: [
          { upTo: 6, supplyId: "carton-12" },
          { upTo: 2, supplyId: "carton-8" },
        ],
      }),
    ];
    const { bill, isKnown } = itemTypePacking(rows({ recipes, packed: [], sizes: new Map() }), "mug", UNTIL);
    expect(isKnown).toBe(true);
    expect(Object.fromEntries(bill)).toEqual({ paper: 10, "carton-8": 1 });
  });

  it("can be asked as if it were packed in another style", () => {
    const recipes = [
      recipe("paper", { piece: { paper: 10 } }),
      recipe("bubble", { style: "bubble", piece: { bubble: 6 } }),
    ];
    const { bill } = itemTypePacking(rows({ recipes }), "mug", UNTIL, "bubble");
    expect(bill.get("paper")).toBeUndefined();
    expect(bill.get("bubble")).toBe(6);
  });

  it("takes the recipe that holds at the end, not one that comes later", () => {
    const recipes = [
      recipe("now", { piece: { paper: 10 } }),
      recipe("later", { piece: { paper: 1 }, from: "2026-12-01" }),
    ];
    expect(itemTypePacking(rows({ recipes }), "mug", UNTIL).bill.get("paper")).toBe(10);
  });

  it("is not known without parcels and recipes", () => {
    expect(itemTypePacking(rows(), "vase", UNTIL).isKnown).toBe(false);
  });

  it("counts a carton as one use, whatever is in it", () => {
    const { sum, squares } = itemTypePacking(rows(), "mug", UNTIL).momentsOf("carton-8");
    expect(sum).toBe(24);
    expect(squares).toBe(24);
    const odd = [packed(addDays(FIRST_MONDAY, 1), { cartonId: "" })];
    expect(itemTypePacking(rows({ packed: odd }), "mug", UNTIL).momentsOf("carton-8").sum).toBe(0);
  });
});
