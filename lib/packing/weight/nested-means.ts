/** A value with its precision (1 / variance): of a group, inside a type, inside the shop. */
export type NestedValue = {
  readonly typeKey: string;
  readonly groupKey: string;
  readonly value: number;
  /** what the shop's slope is taken with */
  readonly extra: number;
  readonly precision: number;
};

/** Variances of what types and groups add, and of the shop's level and slope; all above 0. */
export type NestedVariances = {
  readonly types: number;
  readonly groups: number;
  readonly level: number;
  readonly slope: number;
};

/** A mean with its variance. */
export type Belief = { readonly mean: number; readonly variance: number };

/** What is believed of the shop, its types and its groups once the values are known. */
export type NestedMeans = {
  /** of a value with this extra; types and groups never met are those that could be */
  readonly of: (at: Pick<NestedValue, "typeKey" | "groupKey" | "extra">) => Belief;
  /** what each type adds to the shop, each group to its type */
  readonly typeParts: readonly Belief[];
  readonly groupParts: readonly Belief[];
};

/** Sums of precisions p, with extra x and value y: p, p x, p x², p y, p x y. */
type Sums = readonly [p: number, px: number, pxx: number, py: number, pxy: number];
const NOTHING: Sums = [0, 0, 0, 0, 0];

type Line = {
  readonly level: number;
  readonly slope: number;
  readonly variance: readonly [number, number, number];
};

/**
 * Means of groups inside types inside a shop, each drawn towards the one above it as far as its own values are few:
 * value = level + slope · extra + type + group + error, with normal parts of known variances. Groups are taken out first,
 * then types; what is left is two numbers of the shop.
 *
 * @param values at least none; precisions from 0
 * @param variances all above 0
 * @returns the beliefs: exact, with all that is unsure about the parts above
 * @see the mixed model equations of C. R. Henderson, solved by elimination (from memory; checked in the tests against
 * the full matrix)
 * @example nestedMeans([], variances).of({ typeKey: "mug", groupKey: "mug 8", extra: 0 }).mean // 0
 */
export function nestedMeans(values: readonly NestedValue[], variances: NestedVariances): NestedMeans {
  const types = new Map<string, Map<string, Sums>>();
  for (const { typeKey, groupKey, value, extra, precision } of values) {
    const groups = types.get(typeKey) ?? new Map<string, Sums>();
    types.set(typeKey, groups);
    const more: Sums = [
      precision,
      precision * extra,
      precision * extra * extra,
      precision * value,
      precision * extra * value,
    ];
    groups.set(groupKey, total([groups.get(groupKey) ?? NOTHING, more]));
  }
  const typeSums = new Map(
    [...types].map(([key, groups]) => [
      key,
      total([...groups.values()].map((sums) => without(sums, 1 / variances.groups))),
    ]),
  );
  const shop = total([...typeSums.values()].map((sums) => without(sums, 1 / variances.types)));
  const line = lineOf(shop, variances);
  const typeOf = (key: string): Part => part(typeSums.get(key) ?? NOTHING, 1 / variances.types);
  const groupOf = (typeKey: string, groupKey: string): Part =>
    part(types.get(typeKey)?.get(groupKey) ?? NOTHING, 1 / variances.groups);
  return {
    of: ({ typeKey, groupKey, extra }) => sumBelief(line, typeOf(typeKey), groupOf(typeKey, groupKey), extra),
    typeParts: [...typeSums.keys()].map((key) => typeBelief(line, typeOf(key))),
    groupParts: [...types].flatMap(([key, groups]) =>
      [...groups.keys()].map((groupKey) => groupBelief(line, typeOf(key), groupOf(key, groupKey))),
    ),
  };
}

function total(list: readonly Sums[]): Sums {
  let [p, px, pxx, py, pxy] = NOTHING;
  for (const sums of list) {
    p += sums[0];
    px += sums[1];
    pxx += sums[2];
    py += sums[3];
    pxy += sums[4];
  }
  return [p, px, pxx, py, pxy];
}

/** What values say about the parts above once a part of their own, of this precision, is taken out. */
function without([p, px, pxx, py, pxy]: Sums, precision: number): Sums {
  const share = 1 / (p + precision);
  return [
    p - p * p * share,
    px - p * px * share,
    pxx - px * px * share,
    py - p * py * share,
    pxy - px * py * share,
  ];
}

function lineOf([p, px, pxx, py, pxy]: Sums, { level, slope }: NestedVariances): Line {
  const [a, d] = [p + 1 / level, pxx + 1 / slope];
  const determinant = a * d - px * px;
  return {
    level: (d * py - px * pxy) / determinant,
    slope: (a * pxy - px * py) / determinant,
    variance: [d / determinant, -px / determinant, a / determinant],
  };
}

/** A part given what is above it: mean `value` - `own` · above - `slope` · slope of the shop, and its own variance. */
type Part = {
  readonly own: number;
  readonly slope: number;
  readonly value: number;
  readonly variance: number;
};

function part([p, px, , py]: Sums, precision: number): Part {
  const variance = 1 / (p + precision);
  return { own: p * variance, slope: px * variance, value: py * variance, variance };
}

/** A value plus level and slope of the shop, each taken so many times. */
function withLine(line: Line, level: number, slope: number, rest: Belief): Belief {
  const [a, b, c] = line.variance;
  return {
    mean: rest.mean + level * line.level + slope * line.slope,
    variance: rest.variance + level * level * a + 2 * level * slope * b + slope * slope * c,
  };
}

function sumBelief(line: Line, type: Part, group: Part, extra: number): Belief {
  const left = 1 - group.own;
  return withLine(line, left * (1 - type.own), extra - group.slope - left * type.slope, {
    mean: group.value + left * type.value,
    variance: group.variance + left * left * type.variance,
  });
}

function typeBelief(line: Line, type: Part): Belief {
  return withLine(line, -type.own, -type.slope, { mean: type.value, variance: type.variance });
}

function groupBelief(line: Line, type: Part, group: Part): Belief {
  return withLine(line, -group.own * (1 - type.own), group.own * type.slope - group.slope, {
    mean: group.value - group.own * type.value,
    variance: group.variance + group.own * group.own * type.variance,
  });
}
