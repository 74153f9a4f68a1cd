import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logGamma, stirlingRemainder } from "#lib/statistics/log-gamma";

function closeTo(actual: number, expected: number, relative: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

describe("log gamma", () => {
  it("of whole numbers is the logarithm of the factorial before", () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n += 1) {
      closeTo(logGamma(n), Math.log(factorial), 4e-15);
      factorial *= n;
    }
  });

  it("is 0 at 1 and 2 and keeps its digits beside them, where the slope is psi(1) and psi(2) (from memory)", () => {
    const euler = 0.5772156649015329;
    expect(logGamma(1)).toBe(0);
    expect(logGamma(2)).toBe(0);
    closeTo(logGamma(1 + 2 ** -40), -euler * 2 ** -40, 1e-11);
    closeTo(logGamma(2 + 2 ** -40), (1 - euler) * 2 ** -40, 1e-11);
  });

  it("at a half is ln sqrt(pi)", () => {
    closeTo(logGamma(0.5), Math.log(Math.PI) / 2, 1e-15);
  });

  it("grows by ln x from x to x + 1", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-8, max: 1000, noNaN: true }), (x) => {
        const scale = Math.max(1, Math.abs(logGamma(x)));
        expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x))).toBeLessThan(1e-14 * scale);
      }),
    );
  });

  it("doubles by Legendre's formula (from memory)", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), (x) => {
        const doubled = logGamma(x) + logGamma(x + 0.5) + (2 * x - 1) * Math.LN2 - Math.log(Math.PI) / 2;
        expect(Math.abs(logGamma(2 * x) - doubled)).toBeLessThan(1e-14 * Math.max(1, Math.abs(doubled)));
      }),
    );
  });

  it.each([0, -1, Infinity, Number.NaN])("refuses %s", (x) => {
    expect(() => logGamma(x)).toThrow(RangeError);
  });
});

describe("Stirling remainder", () => {
  it("stirlingRemainder(1) is the example of its docstring, 1 - ln(2 pi) / 2", () => {
    closeTo(stirlingRemainder(1), 1 - Math.log(2 * Math.PI) / 2, 1e-14);
  });

  it("lies between 1 / (12 x + 1) and 1 / (12 x) (Robbins 1955, from memory)", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (x) => {
        expect(stirlingRemainder(x)).toBeGreaterThan(1 / (12 * x + 1));
        expect(stirlingRemainder(x)).toBeLessThan(1 / (12 * x));
      }),
    );
  });

  it.each([0, -1, Infinity, Number.NaN])("refuses %s", (x) => {
    expect(() => stirlingRemainder(x)).toThrow(RangeError);
  });
});
