import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalQuantile } from "#lib/statistics/normal-quantile";

describe("normal quantile", () => {
  it("normalQuantile(0.95) is the example of its docstring", () => {
    expect(normalQuantile(0.95)).toBeCloseTo(1.6448536269514722, 12);
  });

  it("reaches far into the tail (R: qnorm(1e-10), from memory)", () => {
    expect(normalQuantile(1e-10)).toBeCloseTo(-6.361340902404056, 9);
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])("refuses %s", (probability) => {
    expect(() => normalQuantile(probability)).toThrow(RangeError);
  });

  it("is the same distance from 0 on both sides", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1023 }), (part) => {
        expect(normalQuantile(part / 1024)).toBeCloseTo(-normalQuantile(1 - part / 1024), 12);
      }),
    );
  });

  it("rises with the probability", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9998 }), (part) => {
        expect(normalQuantile((part + 1) / 10_000)).toBeGreaterThan(normalQuantile(part / 10_000));
      }),
    );
  });
});
