import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { firstWeeks, firstWeeksDispersions, weekDispersion } from "#lib/forecast/shop/first-weeks";
import { itemType, shopHistory, steady } from "./shop-history-fixture";

const empty = shopHistory([itemType("mug", [])]);
const guessing = { ...empty, guessedParcels: 10 };
const rateOf = (belief: ReturnType<typeof firstWeeks>) =>
  belief === null ? null : belief.parcels.events / belief.parcels.weeks;
const inDays = (days: number, parcels: number, guessedParcels: number | null = null) => ({
  ...shopHistory([itemType("mug", [], { firstDays: { parcels, pieces: parcels } })]),
  firstDays: days,
  guessedParcels,
});

// Johnson, Ott and Dogucu (2022), Bayes Rules!, chapter 5: a gamma belief worth n weeks moves to the counts.
describe("belief in a shop's first weeks", () => {
  it("is the guess alone before the first week: 10 parcels, all of it guessed", () => {
    const belief = firstWeeks(guessing, []);
    expect(rateOf(belief)).toBe(10);
    expect(belief).toMatchObject({ guessedShare: 1, weeksSeen: 0 });
  });

  it("is half of the guess after two weeks, a fifth after eight", () => {
    // (20 + 4 + 8) / (2 + 2)
    const two = firstWeeks(guessing, [4, 8]);
    expect(rateOf(two)).toBe(8);
    expect(two).toMatchObject({ guessedShare: 0.5, weeksSeen: 2 });
    // (20 + 8 x 5) / 10
    const eight = firstWeeks(guessing, steady(8, 5));
    expect(rateOf(eight)).toBe(6);
    expect(eight?.guessedShare).toBeCloseTo(0.2, 12);
  });

  it("is the mean of what there is without a guess, and owes nothing to one", () => {
    const belief = firstWeeks(empty, [4, 8, 6]);
    expect(rateOf(belief)).toBeCloseTo(6, 12);
    // How sure it is rests on the 18 parcels and half a parcel more (Jeffreys).
    expect(belief?.parcels.events).toBe(18.5);
    expect(belief?.guessedShare).toBe(0);
    expect(rateOf(firstWeeks({ ...empty, guessedParcels: 0 }, [4, 8, 6]))).toBe(rateOf(belief));
  });

  it("is half a parcel in all the weeks where none came and none was guessed", () => {
    expect(rateOf(firstWeeks(empty, [0, 0, 0, 0]))).toBe(0.5 / 4);
  });

  it("counts days as parts of a week while no week is over", () => {
    // 6 parcels in 3 days: 14 a week.
    expect(rateOf(firstWeeks(inDays(3, 6), []))).toBeCloseTo(14, 12);
    // (20 + 6) / (2 + 3 / 7)
    const guessed = firstWeeks(inDays(3, 6, 10), []);
    expect(rateOf(guessed)).toBeCloseTo(26 / (2 + 3 / 7), 12);
    expect(guessed?.guessedShare).toBeCloseTo(2 / (2 + 3 / 7), 12);
  });

  it("is none where there is neither a guess nor a day of records", () => {
    expect(firstWeeks(empty, [])).toBeNull();
    expect(firstWeeks({ ...empty, guessedParcels: -3 }, [])).toBeNull();
  });

  it("lies between the guess and the mean of the records", () => {
    const weeks = fc.array(fc.nat(40), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(weeks, fc.integer({ min: 1, max: 40 }), (parcels, guessedParcels) => {
        const rate = rateOf(firstWeeks({ ...empty, guessedParcels }, parcels)) ?? Number.NaN;
        const mean = parcels.reduce((sum, each) => sum + each, 0) / parcels.length;
        expect(rate).toBeGreaterThanOrEqual(Math.min(mean, guessedParcels) - 1e-9);
        expect(rate).toBeLessThanOrEqual(Math.max(mean, guessedParcels) + 1e-9);
      }),
    );
  });
});

describe("spread in the first weeks", () => {
  it("is the doubt of the rate and what weeks differ by", () => {
    // 1 / 20 + 0.25 / 5 + 0.25, 1 / 20 + 0.25 / 5 + 0.25 / 2
    const [one, two] = firstWeeksDispersions({ events: 20, weeks: 5, week: 0.25 }, 2);
    expect(one).toBeCloseTo(0.35, 12);
    expect(two).toBeCloseTo(0.225, 12);
  });

  it("narrows as parcels come, and for longer sums, but never below the doubt of the rate", () => {
    const events = fc.double({ min: 0.5, max: 500, noNaN: true });
    fc.assert(
      fc.property(events, fc.double({ min: 0.1, max: 50, noNaN: true }), (few, more) => {
        const of = (seen: number) => firstWeeksDispersions({ events: seen, weeks: seen, week: 0.25 }, 13);
        const [before, after] = [of(few), of(few + more)];
        for (const [step, k] of after.entries()) {
          expect(k).toBeLessThan(before[step] ?? Number.NaN);
          expect(k).toBeGreaterThan(1 / (few + more));
        }
        expect(after).toEqual(after.toSorted((a, b) => b - a));
      }),
    );
  });
});

describe("what single weeks differ by", () => {
  it("is a guess before four weeks, and where nothing came", () => {
    expect(weekDispersion([3, 9, 1], 1)).toBe(0.25);
    expect(weekDispersion([0, 0, 0, 0, 0], 1)).toBe(0.25);
  });

  it("moves to none where weeks are alike, the guess counting as one more week", () => {
    expect(weekDispersion([5, 5, 5, 5, 5, 5, 5, 5], 1)).toBeCloseTo(0.25 / 9, 12);
  });

  it("by hand: 8 weeks of mean 4 and variance 288 / 7", () => {
    // 41.143 × (1 + 9 / 7) = 94.04, k (94.04 - 4) / 16 = 5.6276; by chance 2 / 4 × √(2 / 7) = 0.2673;
    // 5.6276² / (5.6276 + 0.2673) = 5.3725, and (8 × 5.3725 + 0.25) / 9.
    const weeks = [0, 0, 0, 0, 0, 4, 12, 16];
    expect(weekDispersion(weeks, 1)).toBeCloseTo((8 * 5.3725 + 0.25) / 9, 3);
  });

  it("is more where weeks differ more", () => {
    expect(weekDispersion([1, 9, 0, 8, 2, 10], 1)).toBeGreaterThan(weekDispersion([4, 6, 5, 4, 6, 5], 1));
  });
});
