import { describe, expect, it } from "vitest";
import { mixProof } from "#lib/cushioning/purchase/mix-proof";

const costs = { totalMinor: 20, grossMinor: 1000 };
const known = { bound: 10, leastUndone: true, gapAsked: 0.01, seconds: 1 };

describe("the proof of a mix", () => {
  it("measures the gap against the gross cost, as the total may be near nothing", () => {
    expect(mixProof(costs, known)).toEqual({
      boundMinor: 10,
      gap: 0.01,
      leastUndone: true,
      proven: true,
      seconds: 1,
    });
  });

  it("is none beyond the gap asked for, nor where less might be left undone", () => {
    expect(mixProof(costs, { ...known, gapAsked: 0.009 }).proven).toBe(false);
    expect(mixProof(costs, { ...known, leastUndone: false }).proven).toBe(false);
  });

  it("has no bound above the total, and none where nothing is proven", () => {
    expect(mixProof(costs, { ...known, bound: 20.1 })).toMatchObject({ boundMinor: 20, gap: 0 });
    const none = mixProof(costs, { ...known, bound: Number.NEGATIVE_INFINITY });
    expect(none).toMatchObject({ boundMinor: null, gap: null, proven: false });
  });
});
