import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { believedQuantile, guessedShare, updatedBelief } from "#lib/forecast/rate-belief";

const guess = { events: 40, weeks: 4 };

describe("belief in a weekly rate", () => {
  it("moves from the guess to the data, and says how much is still guess", () => {
    const later = updatedBelief(guess, [4, 6, 5, 5]);
    // 40 + 20 over 4 + 4 weeks: half way between 10 and 5.
    expect(later.events / later.weeks).toBe(7.5);
    expect(guessedShare(guess, later)).toBe(0.5);
    expect(guessedShare(guess, guess)).toBe(1);
  });

  it("comes out the same week by week and all at once", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(50), { maxLength: 12 }), (counts) => {
        const weekly = counts.reduce((belief, count) => updatedBelief(belief, [count]), guess);
        expect(weekly).toEqual(updatedBelief(guess, counts));
      }),
    );
  });

  it("asks for more stock while less is known", () => {
    const vague = { events: 10, weeks: 1 };
    const sure = { events: 400, weeks: 40 };
    const question = { weeks: 3, chance: 0.95 };
    expect(believedQuantile(vague, question)).toBeGreaterThan(believedQuantile(sure, question));
  });

  it("requires a guess above nothing", () => {
    expect(() => updatedBelief({ events: 0, weeks: 1 }, [1])).toThrow(RangeError);
    expect(() => updatedBelief({ events: 1, weeks: 0 }, [1])).toThrow(RangeError);
  });
});
