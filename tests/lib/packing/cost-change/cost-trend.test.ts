import { describe, expect, it } from "vitest";
import { costTrend, TREND_LUCK } from "#lib/packing/cost-change/cost-trend";
import { evenRandom } from "#lib/statistics/even-random";
import { normalDraw } from "#lib/statistics/normal-draw";

const BEFORE = [100, 104, 96, 101, 99, 100];
const DEARER = BEFORE.map((cost) => cost + 15);
const TABLE = { comparisons: 8, least: 1 };

describe("the trend of costs", () => {
  it("is rising or falling where the means lie further apart than the parcels differ", () => {
    expect(costTrend(BEFORE, DEARER, TABLE)).toEqual({ kind: "rising", difference: 15 });
    expect(costTrend(DEARER, BEFORE, TABLE)).toEqual({ kind: "falling", difference: -15 });
  });

  it("is steady within the spread of the parcels, with the difference told", () => {
    const spread = [60, 140, 90, 110, 100, 100];
    expect(
      costTrend(
        spread,
        spread.map((cost) => cost + 5),
        TABLE,
      ),
    ).toEqual({ kind: "steady", difference: 5 });
  });

  it("is steady where the difference can't be paid", () => {
    expect(costTrend([100, 100, 100, 100, 100], [100.4, 100.4, 100.4, 100.4, 100.4], TABLE).kind).toBe(
      "steady",
    );
  });

  it("is not told from few parcels, nor from none", () => {
    expect(costTrend(BEFORE, DEARER.slice(0, 4), TABLE).kind).toBe("too-few");
    expect(costTrend([], DEARER, TABLE)).toEqual({ kind: "too-few", difference: null });
  });

  it("asks for more the more it compares", () => {
    const now = BEFORE.map((cost) => cost + 4);
    expect(costTrend(BEFORE, now, { comparisons: 1, least: 1 }).kind).toBe("rising");
    expect(costTrend(BEFORE, now, { comparisons: 50, least: 1 }).kind).toBe("steady");
  });

  it("is made up by luck in no more tables than it says, and by the real thing in most", () => {
    const random = evenRandom(12);
    const parcels = (mean: number) => Array.from({ length: 12 }, () => mean + 10 * normalDraw(random));
    const tables = Array.from({ length: 1_000 }, () =>
      Array.from({ length: 8 }, () => costTrend(parcels(200), parcels(200), TABLE).kind),
    );
    const wrong = tables.filter((kinds) => kinds.some((kind) => kind !== "steady")).length;
    // Three standard errors of a share of 1,000 tables above what is said.
    expect(wrong / tables.length).toBeLessThan(TREND_LUCK + 3 * Math.sqrt((TREND_LUCK * 0.95) / 1_000));
    const found = Array.from({ length: 200 }, () => costTrend(parcels(200), parcels(220), TABLE).kind);
    expect(found.filter((kind) => kind === "rising").length).toBeGreaterThan(180);
  });
});
