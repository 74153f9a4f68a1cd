import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chooseWindow } from "#lib/forecast/choose-window";

const weeks = (count: number, use: (week: number) => number) =>
  Array.from({ length: count }, (_, index) => use(index));

describe("choice of the moving average", () => {
  it("takes the mean of all there is under four weeks", () => {
    expect(chooseWindow([10, 20], 2)).toEqual({
      kind: "too-few-weeks",
      method: { kind: "simple", window: 2 },
    });
  });

  it("takes four weeks where there are too few past errors to compare", () => {
    expect(
      chooseWindow(
        weeks(10, () => 5),
        2,
      ).kind,
    ).toBe("too-few-to-compare");
  });

  it("takes the shortest simple average where all are as good", () => {
    expect(
      chooseWindow(
        weeks(40, () => 100),
        2.3,
      ).method,
    ).toEqual({ kind: "simple", window: 4 });
  });

  it("takes a long average for steady use that jumps up and down every week", () => {
    const choice = chooseWindow(
      weeks(80, (week) => [90, 150, 30, 130, 60][week % 5] ?? 0),
      1,
    );
    expect(choice.method.window).toBeGreaterThan(4);
  });

  it("takes the weighted average of four weeks for use that climbs steadily", () => {
    const choice = chooseWindow(
      weeks(40, (week) => 100 + 20 * week),
      2,
    );
    expect(choice.method).toEqual({ kind: "weighted", window: 4 });
  });

  it("says what each method missed by, from the same past weeks on", () => {
    const choice = chooseWindow(
      weeks(40, (week) => 100 + 20 * week),
      2,
    );
    expect(choice).toMatchObject({ kind: "compared" });
    expect(choice.kind === "compared" ? choice.tried.map((tried) => tried.meanAbsoluteError) : []).toEqual([
      120,
      200,
      300,
      100,
      expect.closeTo(2 * 20 * (7 / 3 + 1.5)),
      expect.closeTo(2 * 20 * (12 / 3 + 1.5)),
    ]);
  });

  it("refuses an empty history", () => {
    expect(() => chooseWindow([], 2)).toThrow(RangeError);
  });

  it("never looks at more weeks than there are", () => {
    const history = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 60 }), (values, days) => {
        expect(chooseWindow(values, days / 7).method.window).toBeLessThanOrEqual(values.length);
      }),
    );
  });
});
