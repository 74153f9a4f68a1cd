import { describe, expect, it } from "vitest";
import { promisesKept } from "#lib/packing/weight/promises-kept";

function promises(kept: number, broken: number) {
  return [
    ...Array.from({ length: kept }, () => ({ promisedMg: 1_000_000, scaleMg: 1_000_000 })),
    ...Array.from({ length: broken }, () => ({ promisedMg: 1_000_000, scaleMg: 1_000_001 })),
  ];
}

describe("promises kept", () => {
  it("counts a parcel at the promised weight as kept and one above it as broken", () => {
    expect(promisesKept(promises(1, 0))).toMatchObject({ made: 1, kept: 1, share: 1 });
    expect(promisesKept(promises(0, 1))).toMatchObject({ made: 1, kept: 0, share: 0 });
  });

  it("says what nine in ten may truly be", () => {
    // SciPy 1.17.1: stats.binomtest(9, 10).proportion_ci(0.9, method="exact").
    const { share, low, high } = promisesKept(promises(9, 1));
    expect(share).toBe(0.9);
    expect(low).toBeCloseTo(0.6058366975630259, 10);
    expect(high).toBeCloseTo(0.9948838031076954, 10);
  });

  it("knows nothing without promises", () => {
    expect(promisesKept([])).toEqual({ made: 0, kept: 0, share: null, low: 0, high: 1 });
  });
});
