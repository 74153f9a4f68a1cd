import { describe, expect, it } from "vitest";
import { weightSpreadOf } from "#lib/cushioning/weight-spread-of";
import { spreadTop, spreadUpTo } from "#lib/postage/weight-spread";
import { bell, GRAM } from "./small-ways";

// 1,000 g with a deviation of 40 g. Chances of a normal table, five digits.
const WEIGHT = bell(1_000 * GRAM);

describe("what a parcel may weigh, as postage is worked out with it", () => {
  it.each([
    [920, 0.02275],
    [960, 0.15866],
    [1_000, 0.5],
    [1_020, 0.69146],
    [1_080, 0.97725],
  ])("stays under %s g with the chance of the learned weight, also when asked again", (grams, chance) => {
    const spread = weightSpreadOf(WEIGHT);
    expect(spreadUpTo(spread, grams * GRAM)).toBeCloseTo(chance, 4);
    expect(spreadUpTo(spread, grams * GRAM)).toBeCloseTo(chance, 4);
  });

  it("takes the last stored milligram for the limit itself", () => {
    const spread = weightSpreadOf(bell(1_000 * GRAM, 0.01));
    expect(spreadUpTo(spread, 1_000 * GRAM)).toBeCloseTo(1, 9);
    expect(spreadUpTo(spread, 1_000 * GRAM - 1)).toBeCloseTo(0, 9);
  });

  it("ends where one parcel in a million is heavier: 4.7534 deviations, by a normal table", () => {
    expect(spreadTop(weightSpreadOf(WEIGHT)) / GRAM).toBeCloseTo(1_000 + 4.7534 * 40, 2);
  });

  it("keeps what it rests on, and a guess stays one", () => {
    expect(weightSpreadOf(WEIGHT).basis).toEqual({ parcels: 12, isGuess: false });
    expect(weightSpreadOf({ ...WEIGHT, parcels: 3, guess: true, basis: "guess" }).basis).toEqual({
      parcels: 3,
      isGuess: true,
    });
  });
});
