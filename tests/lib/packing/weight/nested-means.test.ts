import { describe, expect, it } from "vitest";
import { type NestedValue, nestedMeans } from "#lib/packing/weight/nested-means";
import { cholesky, choleskySolve } from "#lib/statistics/cholesky";

const variances = { types: 0.7, groups: 0.3, level: 2, slope: 1.5 };
const values: readonly NestedValue[] = [
  { typeKey: "mug", groupKey: "mug 8", value: 1.2, extra: 0.4, precision: 2 },
  { typeKey: "mug", groupKey: "mug 8", value: 0.7, extra: 0.2, precision: 1 },
  { typeKey: "mug", groupKey: "mug 12", value: 2.4, extra: 0.1, precision: 3 },
  { typeKey: "vase", groupKey: "vase 12", value: -0.3, extra: 0.9, precision: 0.5 },
  { typeKey: "vase", groupKey: "vase 18", value: -1.1, extra: 0.3, precision: 4 },
  { typeKey: "plate", groupKey: "plate 12", value: 0.5, extra: 0.05, precision: 1 },
];

/** Henderson's equations written out in full: level, slope, one unknown for each type and each group. */
const types = ["mug", "vase", "plate"];
const groups = ["mug 8", "mug 12", "vase 12", "vase 18", "plate 12"];
function design(at: Pick<NestedValue, "typeKey" | "groupKey" | "extra">): number[] {
  return [
    1,
    at.extra,
    ...types.map((type) => Number(type === at.typeKey)),
    ...groups.map((group) => Number(group === at.groupKey)),
  ];
}
const priors = [
  1 / variances.level,
  1 / variances.slope,
  ...types.map(() => 1 / variances.types),
  ...groups.map(() => 1 / variances.groups),
];
const whole = cholesky(
  priors.map((prior, row) =>
    priors.map((_, column) =>
      values.reduce(
        (sum, value) => {
          const x = design(value);
          return sum + value.precision * (x[row] ?? 0) * (x[column] ?? 0);
        },
        row === column ? prior : 0,
      ),
    ),
  ),
);
const right = priors.map((_, row) =>
  values.reduce((sum, value) => sum + value.precision * (design(value)[row] ?? 0) * value.value, 0),
);
const solution = choleskySolve(whole, right);
function expected(x: readonly number[]): { mean: number; variance: number } {
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0);
  return { mean: dot(x, solution), variance: dot(x, choleskySolve(whole, x)) };
}

describe("nested means", () => {
  const means = nestedMeans(values, variances);

  it.each(values.map((value) => [value.groupKey, value] as const))(
    "of %s are those of the full equations",
    (_, value) => {
      const belief = means.of(value);
      expect(belief.mean).toBeCloseTo(expected(design(value)).mean, 10);
      expect(belief.variance).toBeCloseTo(expected(design(value)).variance, 10);
    },
  );

  it("of a group never met are those of its type, wider by what groups differ", () => {
    const at = { typeKey: "mug", groupKey: "mug 18", extra: 0.3 };
    const { mean, variance } = expected(design(at));
    expect(means.of(at).mean).toBeCloseTo(mean, 10);
    expect(means.of(at).variance).toBeCloseTo(variance + variances.groups, 10);
  });

  it("of a type never met are those of the shop, wider by what types and groups differ", () => {
    const at = { typeKey: "bowl", groupKey: "bowl 8", extra: 0.3 };
    const { mean, variance } = expected(design(at));
    expect(means.of(at).mean).toBeCloseTo(mean, 10);
    expect(means.of(at).variance).toBeCloseTo(variance + variances.types + variances.groups, 10);
  });

  it("tells what each type and each group adds", () => {
    const unit = (place: number) => priors.map((_, at) => Number(at === place));
    means.typeParts.forEach(({ mean, variance }, at) => {
      expect(mean).toBeCloseTo(expected(unit(2 + at)).mean, 10);
      expect(variance).toBeCloseTo(expected(unit(2 + at)).variance, 10);
    });
    means.groupParts.forEach(({ mean, variance }, at) => {
      expect(mean).toBeCloseTo(expected(unit(5 + at)).mean, 10);
      expect(variance).toBeCloseTo(expected(unit(5 + at)).variance, 10);
    });
    expect([means.typeParts.length, means.groupParts.length]).toEqual([3, 5]);
  });

  it("without values are what was believed before", () => {
    const belief = nestedMeans([], variances).of({ typeKey: "mug", groupKey: "mug 8", extra: 0 });
    expect(belief.mean).toBe(0);
    expect(belief.variance).toBeCloseTo(variances.level + variances.types + variances.groups, 12);
  });
});
