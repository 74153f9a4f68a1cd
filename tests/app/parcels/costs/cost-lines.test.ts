import { describe, expect, it } from "vitest";
import { costLines } from "#app/parcels/costs/cost-lines.ts";
import { costsFinding } from "#app/parcels/costs/costs-finding.ts";
import { trendWords } from "#app/parcels/costs/trend-words.ts";
import { amountOfUnits } from "#lib/units/amount";

const CENT = 10_000;
const SHOP = { currency: "USD", minorDigits: 2 };
const PRICES = new Map([
  ["paper", 8 * CENT],
  ["cube-8", 110 * CENT],
]);

/** Parcels of an item type with seven sheets and a carton each, at these costs in cents. */
function costs(itemTypeId: string, cents: readonly number[]) {
  return {
    itemTypeId,
    parcels: cents.length,
    pieces: cents.length,
    costs: cents.map((each) => each * CENT),
    taken: [
      {
        supplyId: "paper",
        kind: "paper",
        amount: amountOfUnits(7 * cents.length),
        value: cents.reduce((sum, each) => sum + each - 90, 0) * CENT,
      },
      {
        supplyId: "cube-8",
        kind: "carton",
        amount: amountOfUnits(cents.length),
        value: 90 * CENT * cents.length,
      },
    ],
  };
}

const NOW = [costs("mug", [150, 151, 149, 150, 150]), costs("bowl", [139, 141, 140, 140, 140, 140])];
const BEFORE = [costs("mug", [130, 131, 129, 130, 130])];

describe("what packing costs", () => {
  it("is the mean of the parcels on both bases, by kind, the most sent first", () => {
    const lines = costLines(NOW, BEFORE, PRICES);
    expect(lines.map(({ itemTypeId }) => itemTypeId)).toEqual(["bowl", "mug"]);
    expect(lines[1]).toMatchObject({
      parcels: 5,
      parcelsBefore: 5,
      booked: 5,
      mean: { cash: 150 * CENT, replacement: 166 * CENT },
      kinds: [
        { kind: "carton", cash: 90 * CENT, replacement: 110 * CENT },
        { kind: "paper", cash: 60 * CENT, replacement: 56 * CENT },
      ],
      trend: { kind: "rising", difference: 20 * CENT },
    });
    expect(lines[0]?.trend).toEqual({ kind: "too-few", difference: null });
  });

  it("takes the mean in cash of those parcels alone whose cost is known", () => {
    const known = costs("mug", [150, 150]);
    const [line] = costLines([{ ...known, parcels: 4, pieces: 4 }], [], PRICES);
    expect(line).toMatchObject({ parcels: 4, booked: 2, mean: { cash: 150 * CENT, replacement: 83 * CENT } });
  });

  it("is said in words, with the difference in money", () => {
    const [bowl, mug] = costLines(NOW, BEFORE, PRICES);
    expect(trendWords(mug?.trend ?? { kind: "steady", difference: 0 }, SHOP)).toBe("rising: $0.20 more");
    expect(trendWords(bowl?.trend ?? { kind: "steady", difference: 0 }, SHOP)).toBe("nothing to compare");
    expect(trendWords({ kind: "steady", difference: -3 * CENT }, SHOP)).toBe(
      "no more than parcels differ ($0.03 less)",
    );
    expect(trendWords({ kind: "too-few", difference: 3 * CENT }, SHOP)).toBe(
      "too few parcels to tell ($0.03 more)",
    );
  });

  it("opens with the mean and what is moving", () => {
    const nameOf = (id: string) => id.toUpperCase();
    // (6 × 140 + 5 × 150) / 11 is 144.5 cents, and a half goes to the even cent.
    expect(costsFinding(costLines(NOW, BEFORE, PRICES), nameOf, SHOP)).toBe(
      "A parcel’s material cost $1.45 on average; MUG is rising.",
    );
    expect(costsFinding(costLines(NOW, NOW, PRICES), nameOf, SHOP)).toContain("nothing moved");
    expect(costsFinding([], nameOf, SHOP)).toContain("No parcel");
    const unknown = costLines([{ ...costs("mug", []), parcels: 3, pieces: 3 }], [], PRICES);
    expect(costsFinding(unknown, nameOf, SHOP)).toContain("not known yet");
  });
});
