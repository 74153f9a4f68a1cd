import { describe, expect, it } from "vitest";
import { bestSearch } from "#lib/forecast/methods/best-search";

/** Squared: two valleys, (a² - 4)² + (a - 2)² / 100: the one at 2 is deeper (0 against about 0.16 at -2). */
const residuals = ([a = 0]: readonly number[]) => [a * a - 4, (a - 2) / 10];
const bounds = [[-9, 9]] as const;

describe("search from several starts", () => {
  it("finds the deeper valley though the first start leads into the other", () => {
    const fromLeft = bestSearch({ residuals, bounds }, [[-3]]);
    expect(fromLeft.parameters[0]).toBeCloseTo(-2, 1);
    const fromBoth = bestSearch({ residuals, bounds }, [[-3], [3]]);
    expect(fromBoth.parameters[0]).toBeCloseTo(2, 6);
    expect(fromBoth.sumOfSquares).toBeLessThan(1e-9);
  });

  it("refuses to search from nowhere", () => {
    expect(() => bestSearch({ residuals, bounds }, [])).toThrow(RangeError);
  });
});
