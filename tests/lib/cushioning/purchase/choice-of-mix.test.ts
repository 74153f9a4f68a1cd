import { describe, expect, it } from "vitest";
import { choiceOfMix } from "#lib/cushioning/purchase/choice-of-mix";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { smallMix } from "./small-mix";

describe("what a mix decides", () => {
  it("costs the same again", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const question = smallMix(seed, 3);
      const mix = costedMix(question, greedyMix(question));
      const again = costedMix(question, choiceOfMix(mix));
      expect(again.orders).toEqual(mix.orders);
      expect(again.split).toEqual(mix.split);
      expect(again.costs.totalMinor).toBeCloseTo(mix.costs.totalMinor, 9);
    }
  });
});
