import { describe, expect, it } from "vitest";
import { buyingTermsForm, termsOf } from "#app/setup/buying-terms-form.ts";
import { promiseChoices, promiseOf, promiseWords } from "#app/setup/promise.ts";

const form = buyingTermsForm(2, "imperial", 8);

describe("what the shop has decided about its buying", () => {
  it("is read from what was typed", () => {
    const typed = {
      longestCoverWeeks: "20",
      holding: "17,5 %",
      orderCost: "4",
      weekLimit: "300",
      room: "40 cu ft",
    };
    expect(termsOf(form.parse(typed))).toEqual({
      longestCoverWeeks: 20,
      holdingPerMille: 175,
      orderCostMinor: 400,
      weekLimitMinor: 30_000,
      roomMl: 1_132_674,
      roomTyped: "40 cu ft",
    });
  });

  it("is as usual, or without a limit, where a field is left empty", () => {
    expect(termsOf(form.parse({}))).toEqual({
      longestCoverWeeks: 26,
      holdingPerMille: 200,
      orderCostMinor: 0,
      weekLimitMinor: null,
      roomMl: null,
      roomTyped: null,
    });
  });

  it.each([
    ["longestCoverWeeks", "7"],
    ["holding", "101"],
    ["holding", "a lot"],
    ["weekLimit", "-1"],
    ["room", "40"],
  ])("refuses %s of %s by its field", (field, typed) => {
    const read = form.safeParse({ [field]: typed });
    expect(read.error?.issues.map((issue) => issue.path)).toEqual([[field]]);
  });
});

describe("a promise", () => {
  it("says which of the two kinds is meant", () => {
    expect(promiseWords({ goal: "cycles", perMille: 950 })).toBe("run out at most once in 20 order cycles");
    expect(promiseWords({ goal: "share", perMille: 980 })).toBe("fill 98 of 100 from stock");
    expect(promiseWords({ goal: "share", perMille: 995 })).toBe("fill 995 of 1,000 from stock");
  });

  it("is read back from its choice, and one of its own stands in the list", () => {
    for (const { value } of promiseChoices({ goal: "cycles", perMille: 930 })) {
      expect(promiseOf(value)).not.toBeNull();
    }
    expect(promiseChoices({ goal: "cycles", perMille: 930 }).at(-1)?.value).toBe("cycles:930");
    expect(promiseChoices(null)).toHaveLength(8);
    expect([promiseOf("cycles:400"), promiseOf("often:950"), promiseOf("")]).toEqual([null, null, null]);
  });
});
