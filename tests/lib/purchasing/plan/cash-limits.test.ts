import { describe, expect, it } from "vitest";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import { plainQuestion, plainSupply } from "./small-question";

describe("cash limits", () => {
  it("are those of the question, and this week's sum where the aim sets one", () => {
    const limits = { cash: [{ throughWeek: 1, minor: 900 }], litres: null };
    const question = plainQuestion({
      supplies: [plainSupply("paper", [1, 1])],
      suppliers: [],
      offers: [],
      limits,
    });
    expect(cashLimits(question)).toEqual([{ throughWeek: 1, minor: 900 }]);
    expect(cashLimits({ ...question, aim: { kind: "within", minor: 300 } })).toEqual([
      { throughWeek: 1, minor: 900 },
      { throughWeek: 0, minor: 300 },
    ]);
  });
});
