import { describe, expect, it } from "vitest";
import { believedQuantile, updatedBelief } from "#lib/forecast/rate-belief";

describe("belief in a weekly rate against published examples", () => {
  // Bayes Rules! chapter 5, https://r4ds.github.io/bookclub-bayes_rules/gamma-poisson-conjugate-family-88.html;
  // the quantiles over two weeks were computed apart from this code.
  it("Gamma(10, 2) and counts of 6, 2, 2 and 1 give Gamma(21, 6), mean 3.5", () => {
    const belief = updatedBelief({ events: 10, weeks: 2 }, [6, 2, 2, 1]);
    expect(belief).toEqual({ events: 21, weeks: 6 });
    const quantiles = [0.5, 0.9, 0.95].map((chance) => believedQuantile(belief, { weeks: 2, chance }));
    expect(quantiles).toEqual([7, 11, 12]);
  });

  // https://paiml.github.io/aprender/examples/gamma-poisson-inference.html
  it("a nearly empty prior and ten counts of 4 on average give a mean of 4.0", () => {
    const belief = updatedBelief({ events: 0.001, weeks: 0.001 }, [3, 5, 4, 6, 2, 4, 5, 3, 4, 4]);
    expect(belief.events / belief.weeks).toBeCloseTo(3.99970003, 8);
    expect(believedQuantile(belief, { weeks: 1, chance: 0.95 })).toBe(8);
  });
});
