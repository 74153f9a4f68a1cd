import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { naive } from "#lib/forecast/methods/naive";
import { pooledDispersions, runningTotals, sumDispersions, sumLooks } from "#lib/forecast/sum-looks";

// The sums and k are worked out by hand from their definitions.
const lastValue = (values: readonly number[]) => naive.fitted({ values, seasonLength: 1 });
const look = (origin: number, expected: readonly number[], actual: readonly number[]) => ({
  origin,
  expected,
  actual,
});

describe("running totals", () => {
  it("add up step by step", () => {
    expect(runningTotals([1, 2, 3])).toEqual([1, 3, 6]);
    expect(runningTotals([])).toEqual([]);
  });
});

describe("looks back at sums", () => {
  it("set what was said from each past week on against what came, as far as it came", () => {
    const values = [3, 5, 4, 6];
    expect(sumLooks(lastValue(values), values, { firstOrigin: 1, steps: 2 })).toEqual([
      look(1, [3, 6], [5, 9]),
      look(2, [5, 10], [4, 10]),
      look(3, [4, 8], [6]),
    ]);
  });

  it("take a forecast below nothing as nothing, step by step", () => {
    const falling = { forecastAfter: () => [2, -1, -4] };
    expect(sumLooks(falling, [1, 1], { firstOrigin: 1, steps: 3 })[0]?.expected).toEqual([2, 2, 2]);
  });

  it("are none where the series is too short", () => {
    expect(sumLooks(lastValue([3]), [3], { firstOrigin: 4, steps: 2 })).toEqual([]);
  });
});

describe("k of a route's sums", () => {
  // Ten looks at one step: each 10 said, 16 came. ((16 - 10)² - 10) / 10² = 0.26
  const ten = Array.from({ length: 10 }, (_, index) => look(index + 4, [10], [16]));

  it("is half its own and half that of all series after ten looks, raised by a fifth", () => {
    // (0.26 + 0.1) / 2 x (1 + 2 / 10)
    expect(sumDispersions({ looks: ten, perUse: 1, pooled: [0.1] })[0]).toBeCloseTo(0.216, 12);
  });

  it("leaves out what uses that come whole make uneven by themselves", () => {
    // (36 - 3 x 10) / 100 = 0.06; (0.06 + 0.1) / 2 x 1.2
    expect(sumDispersions({ looks: ten, perUse: 3, pooled: [0.1] })[0]).toBeCloseTo(0.096, 12);
  });

  it("is that of all series, raised threefold, where nothing was looked back at", () => {
    const [one, two] = sumDispersions({ looks: [], perUse: 1, pooled: [0.2, 0.1] });
    expect(one).toBeCloseTo(0.6, 12);
    expect(two).toBeCloseTo(0.3, 12);
  });

  it("counts sums that overlap in proportion: ten of two steps as five", () => {
    const overlapping = Array.from({ length: 10 }, (_, index) => look(index, [5, 10], [5, 16]));
    // 5 / 15 x 0.26 + 10 / 15 x 0.1, times 1 + 2 / 5
    const found = sumDispersions({ looks: overlapping, perUse: 1, pooled: [0.1, 0.1] })[1];
    expect(found).toBeCloseTo((0.26 / 3 + 0.2 / 3) * 1.4, 12);
  });

  it("knows only what had come by then", () => {
    const early = sumDispersions({ looks: ten.slice(0, 5), perUse: 1, pooled: [0.1] });
    // Looks from 4 to 8 seen are over when 9 are seen.
    expect(sumDispersions({ looks: ten, perUse: 1, pooled: [0.1], before: 9 })).toEqual(early);
    const changed = ten.map((each) => (each.origin < 9 ? each : look(each.origin, [10], [500])));
    expect(sumDispersions({ looks: changed, perUse: 1, pooled: [0.1], before: 9 })).toEqual(early);
    expect(sumDispersions({ looks: changed, perUse: 1, pooled: [0.1], before: 10 })).not.toEqual(early);
  });

  it("is held where a larger one would ask for less stock: a forecast of next to nothing, then a use", () => {
    const surprised = [look(4, [0.001], [5])];
    expect(sumDispersions({ looks: surprised, perUse: 1, pooled: [0.1] })).toEqual([8]);
  });
});

describe("k of many series together", () => {
  const question = { steps: 2, otherwise: (step: number) => 0.5 / step };
  const one = { perUse: 1, looks: [look(4, [10, 20], [16])] };
  const other = { perUse: 1, looks: [look(4, [10], [20]), look(5, [10], [20])] };

  it("is the mean of theirs, each weighing the same, and the guess where none had a look", () => {
    // 0.26 and 0.9; no sum of two weeks came.
    const [first, second] = pooledDispersions([one, other], question);
    expect(first).toBeCloseTo(0.58, 12);
    expect(second).toBe(0.25);
  });

  it("leaves out series of which nothing was ever expected", () => {
    const nothing = { perUse: 1, looks: [look(4, [0, 0], [3, 3])] };
    expect(pooledDispersions([one, nothing], question)[0]).toBeCloseTo(0.26, 12);
    expect(pooledDispersions([nothing], question)).toEqual([0.5, 0.25]);
  });

  it("is never below 0", () => {
    const counts = fc.array(fc.tuple(fc.nat(30), fc.nat(30)), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(counts, (pairs) => {
        const looks = pairs.map(([said, came], index) => look(index, [said], [came]));
        for (const k of pooledDispersions([{ perUse: 1, looks }], question)) {
          expect(k).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});
