import { describe, expect, it } from "vitest";
import { evenRandom } from "#lib/statistics/even-random";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { normalDraw } from "#lib/statistics/normal-draw";

describe("a normal draw", () => {
  it("falls below each point with its chance, to 3.5 standard errors of 100,000 draws", () => {
    const random = evenRandom(1);
    const draws = Array.from({ length: 100_000 }, () => normalDraw(random));
    for (const z of [-2, -1, 0, 0.5, 1.645, 3]) {
      const share = normalCumulative(z);
      const found = draws.filter((draw) => draw <= z).length / draws.length;
      expect(Math.abs(found - share)).toBeLessThan(3.5 * Math.sqrt((share * (1 - share)) / draws.length));
    }
  });

  it("is finite at the ends of the source", () => {
    expect(normalDraw(() => 0)).toBeCloseTo(0, 12);
    expect(Number.isFinite(normalDraw(() => 1 - 2 ** -53))).toBe(true);
  });
});
