import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kindShares } from "#app/parcels/kind-shares.ts";
import { orderCosts } from "#app/parcels/order-costs.ts";
import { costByKind } from "#lib/packing/cost-by-kind";
import { amountOfUnits } from "#lib/units/amount";
import { minorOfCost, roundHalfEven } from "#lib/units/money";

const CENT = 10_000;
const paper = (value: number | null) => ({
  supplyId: "paper",
  kind: "paper",
  amount: amountOfUnits(10),
  value,
});
const THIRDS = [4_000, 4_000, 4_000];

describe("what packing an order cost", () => {
  it("is its share of the parcel, so that the orders add up to it", () => {
    const orders = THIRDS.map((_, own) => ({
      reference: `A-${own}`,
      parcels: [{ parcelId: "one", shares: THIRDS, own }],
    }));
    const lines = orderCosts(
      orders,
      "one",
      new Map([["one", [paper(100 * CENT)]]]),
      new Map([["paper", 20 * CENT]]),
    );
    expect(lines.map(({ here }) => here.cash.minor)).toEqual([34, 33, 33]);
    expect(lines.map(({ here }) => here.replacement.minor)).toEqual([67, 67, 66]);
  });

  it("counts its other parcels too, and says where a cost is not known", () => {
    const orders = [
      {
        reference: "A-1",
        parcels: [
          { parcelId: "one", shares: [12_000], own: 0 },
          { parcelId: "two", shares: [6_000, 6_000], own: 1 },
        ],
      },
    ];
    const materials = new Map([
      ["one", [paper(100 * CENT)]],
      ["two", [paper(50 * CENT), { ...paper(null), supplyId: "bubble", kind: "bubble" }]],
    ]);
    const [line] = orderCosts(orders, "one", materials, new Map([["paper", 20 * CENT]]));
    expect(line).toEqual({
      reference: "A-1",
      parcels: 2,
      here: { cash: { minor: 100, isWhole: true }, replacement: { minor: 200, isWhole: true } },
      inAll: { cash: { minor: 125, isWhole: false }, replacement: { minor: 300, isWhole: false } },
    });
  });
});

describe("what each kind cost", () => {
  it("adds up to the cost shown, whatever the costs are", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 3_000_000 }), { minLength: 1, maxLength: 7 }),
        (values) => {
          const taken = values.map((value, index) => ({ ...paper(value), kind: `kind-${index}` }));
          const { kinds, total } = costByKind(taken, new Map([["paper", 12_345]]));
          const shares = kindShares(kinds, total);
          const sum = (basis: "cashMinor" | "replacementMinor") =>
            shares.reduce((all, share) => all + share[basis], 0);
          expect(sum("cashMinor")).toBe(minorOfCost(total.cash, roundHalfEven));
          expect(sum("replacementMinor")).toBe(minorOfCost(total.replacement, roundHalfEven));
        },
      ),
    );
  });
});
