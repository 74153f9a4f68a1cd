import { describe, expect, it } from "vitest";
import type { CartonChoice } from "#lib/cartons/choice/carton-choice";
import { choiceSum } from "../../../../app/cartons/fit/choice-sum";

type Values = {
  readonly cartonValue: number;
  readonly fillValue: number;
  readonly tapeValue: number;
  readonly postageValue: number | null;
};

/** Money in 1/10,000 cent; of a choice only what is summed. */
function whole(values: Values): CartonChoice {
  const { cartonValue, fillValue, tapeValue, postageValue } = values;
  const value = cartonValue + fillValue + tapeValue + (postageValue ?? 0);
  return {
    why: "cheapest",
    cost: { ...values, massMg: 1_000_000, totalValue: value },
    total: { value, asSpentValue: value },
  } as unknown as CartonChoice;
}

function added({ carton, fill, tape, postage, minutes }: ReturnType<typeof choiceSum>): number {
  return carton + fill + tape + (postage?.minor ?? 0) + (minutes ?? 0);
}

describe("what a carton comes to", () => {
  // 130.00 + 138.60 + 7.60 cents is 276.20: 276, where each by itself rounded would be 130 + 139 + 8.
  it("adds up as shown, though every part has fractions of a cent", () => {
    const sum = choiceSum(
      whole({ cartonValue: 1_300_000, fillValue: 1_386_000, tapeValue: 76_000, postageValue: null }),
    );
    expect([sum.together, added(sum), sum.postage]).toEqual([276, 276, null]);
  });

  it("shows the seller's time where a cut counts it", () => {
    const uncut = whole({
      cartonValue: 1_600_000,
      fillValue: 900_000,
      tapeValue: 70_000,
      postageValue: 9_000_000,
    });
    const cost = { cartonValue: 1_600_000, fillValue: 500_000, tapeValue: 70_000, postageValue: 8_000_000 };
    const cut = { cost: { ...cost, massMg: 900_000 }, minutesValue: 1_250_000 };
    const value = 1_600_000 + 500_000 + 70_000 + 8_000_000 + 1_250_000;
    const sum = choiceSum({
      ...uncut,
      why: "cutDown",
      cut,
      total: { value, asSpentValue: value },
    } as unknown as CartonChoice);
    expect([sum.minutes, sum.together, added(sum)]).toEqual([125, 1142, 1142]);
  });

  it("is nothing where nothing costs anything", () => {
    expect(
      choiceSum(whole({ cartonValue: 0, fillValue: 0, tapeValue: 0, postageValue: null })).together,
    ).toBe(0);
  });
});
