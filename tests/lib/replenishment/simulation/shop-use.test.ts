import { describe, expect, it } from "vitest";
import { runDraws } from "#lib/replenishment/simulation/shop-use";
import { evenRandom } from "#lib/statistics/even-random";
import { FIRST_DAY, oneSupplyUse } from "./one-supply-shop";

describe("the draws of a run", () => {
  it("are a use of each supply and a chance for each supplier, by the day", () => {
    const use = {
      firstDay: FIRST_DAY,
      days: 3,
      calendar: [],
      supplies: [
        { supplyId: "past", source: { kind: "replayed" as const, perDay: [4, 0, 2, 9] } },
        {
          supplyId: "coming",
          source: {
            kind: "drawn" as const,
            path: { firstWeek: FIRST_DAY, perWeek: [70] },
            spread: { perUse: 1, dispersions: [0], whole: true },
          },
        },
      ],
    };
    const draws = runDraws(use, 2)(evenRandom(1));
    expect(draws.use[0]?.slice(0, 3)).toEqual([4, 0, 2]);
    expect(draws.use[1]).toHaveLength(3);
    expect(draws.leadTimeChances.map((chances) => chances.length)).toEqual([3, 3]);
    expect(draws.leadTimeChances.flat().every((chance) => chance >= 0 && chance < 1)).toBe(true);
    const random = evenRandom(1);
    const draw = runDraws(use, 2);
    expect(draw(random)).toEqual(draws);
    expect(draw(random)).not.toEqual(draws);
  });

  it("need days, and a past as long as the days played", () => {
    expect(() => runDraws(oneSupplyUse({ kind: "replayed", perDay: [] }, 0), 1)).toThrow(
      /days above 0, got 0/,
    );
    expect(() => runDraws(oneSupplyUse({ kind: "replayed", perDay: [1] }, 2), 1)).toThrow(
      /2 days of a, got 1/,
    );
  });
});
