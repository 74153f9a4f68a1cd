import { describe, expect, it } from "vitest";
import { COST_CAUSES, type CostCause, costChange } from "#lib/packing/cost-change/cost-change";
import type { PackedPeriod, PackedStyle } from "#lib/packing/cost-change/packed-period";

const CENT = 10_000;
const CARTONS = new Set(["small", "large"]);
const PRICES = new Map([
  ["paper", 7 * CENT],
  ["bubble", 14 * CENT],
  ["small", 80 * CENT],
  ["large", 100 * CENT],
]);
/** Ten single mugs on paper: 4 bubble a piece, 7 paper a parcel, all by the card. */
const onPaper: PackedStyle = {
  style: "paper",
  parcels: 10,
  pieces: 10,
  card: { perPiece: new Map([["bubble", 4]]), perParcel: new Map([["paper", 7]]) },
  took: new Map([
    ["bubble", 40],
    ["paper", 70],
    ["small", 10],
  ]),
};
const may: PackedPeriod = { styles: [onPaper], unitCosts: PRICES };
const like = (change: Partial<PackedStyle>, prices: ReadonlyMap<string, number> = PRICES): PackedPeriod => ({
  styles: [{ ...onPaper, ...change }],
  unitCosts: prices,
});
const took = (change: Readonly<Record<string, number>>) =>
  new Map([...onPaper.took, ...Object.entries(change)]);
const byCause = (now: PackedPeriod, before = may) => {
  const sums = new Map<CostCause, number>();
  for (const { cause, cost } of costChange(before, now, CARTONS).parts) {
    sums.set(cause, (sums.get(cause) ?? 0) + cost);
  }
  return Object.fromEntries([...sums].map(([cause, cost]) => [cause, Math.round(cost)]));
};

describe("what changed the material cost of a parcel", () => {
  // Worked by hand: 4 x 14 + 7 x 7 + 80 = 185 cents.
  it("starts from the mean cost", () => {
    const same = costChange(may, may, CARTONS);
    expect(same.before).toBeCloseTo(185 * CENT, 4);
    expect(same.parts).toEqual([]);
  });

  it("lays one change to its one cause, in full", () => {
    const dearer = new Map([...PRICES, ["paper", 8 * CENT]]);
    expect(byCause(like({}, dearer))).toEqual({ price: 7 * CENT });
    const card = { ...onPaper.card, perParcel: new Map([["paper", 8]]) };
    expect(byCause(like({ card, took: took({ paper: 80 }) }))).toEqual({ card: 7 * CENT });
    expect(byCause(like({ took: took({ small: 8, large: 2 }) }))).toEqual({ carton: 4 * CENT });
    expect(byCause(like({ took: took({ paper: 75 }) }))).toEqual({ rest: 3.5 * CENT });
    expect(byCause(like({ pieces: 15, took: took({ bubble: 60 }) }))).toEqual({ pieces: 28 * CENT });
  });

  // Half on bubble: 9 bubble and no paper, 126 + 80 = 206 against 185 cents; half of the difference of 21.
  it("knows a style that is new from its share alone", () => {
    const onBubble: PackedStyle = {
      style: "bubble",
      parcels: 10,
      pieces: 10,
      card: { perPiece: new Map([["bubble", 4]]), perParcel: new Map([["bubble", 5]]) },
      took: new Map([
        ["bubble", 90],
        ["small", 10],
      ]),
    };
    expect(byCause({ styles: [onPaper, onBubble], unitCosts: PRICES })).toEqual({ style: 10.5 * CENT });
  });

  // Bennet (1920), by hand: paper 7 -> 8 cents while the card goes 7 -> 9 sheets: ½ (7 + 9) x 1 and ½ (7 + 8) x 2 cents.
  it("shares what two causes did together as Bennet does", () => {
    const dearer = new Map([...PRICES, ["paper", 8 * CENT]]);
    const card = { ...onPaper.card, perParcel: new Map([["paper", 9]]) };
    const now = like({ card, took: took({ paper: 90 }) }, dearer);
    expect(byCause(now)).toEqual({ price: 8 * CENT, card: 15 * CENT });
  });

  it("adds up exactly when everything changes, back and forth", () => {
    const now: PackedPeriod = {
      styles: [
        {
          ...onPaper,
          parcels: 7,
          pieces: 12,
          card: { perPiece: new Map([["bubble", 3]]), perParcel: new Map([["paper", 9]]) },
          took: took({ paper: 66, bubble: 37, large: 3, small: 4 }),
        },
        { ...onPaper, style: "mixed", parcels: 5, pieces: 5, took: took({ foam: 20 }) },
      ],
      unitCosts: new Map([...PRICES, ["paper", 8.3 * CENT], ["large", 97 * CENT], ["foam", 11 * CENT]]),
    };
    const there = costChange(may, now, CARTONS);
    const sum = (parts: typeof there.parts) => parts.reduce((all, { cost }) => all + cost, 0);
    expect(sum(there.parts)).toBeCloseTo(there.now - there.before, 4);
    const booked = now.styles
      .flatMap(({ took: all }) => [...all])
      .reduce((all, [supplyId, units]) => all + units * (now.unitCosts.get(supplyId) ?? 0), 0);
    expect(there.now).toBeCloseTo(booked / 12, 4);
    const back = costChange(now, may, CARTONS);
    for (const cause of COST_CAUSES) {
      const of = (parts: typeof there.parts) => sum(parts.filter((part) => part.cause === cause));
      expect(of(back.parts)).toBeCloseTo(-of(there.parts), 4);
    }
  });

  it("does not call a supply dearer that was not bought before", () => {
    const now = like({ took: took({ kraft: 10 }) }, new Map([...PRICES, ["kraft", 5 * CENT]]));
    expect(byCause(now)).toEqual({ rest: 5 * CENT });
  });

  it("refuses a period without a parcel", () => {
    expect(() => costChange({ styles: [], unitCosts: PRICES }, may, CARTONS)).toThrow(/a parcel in both/);
  });
});
