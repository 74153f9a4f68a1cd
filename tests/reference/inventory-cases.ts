import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

// Each case of data/inventory-cases.json carries its own source, address and basis.

type Value = number | string | readonly Value[] | { readonly [name: string]: Value };
type Tolerance = { readonly abs?: number; readonly rel?: number };

type InventoryCase = {
  readonly id: string;
  readonly topic: string;
  readonly input: Readonly<Record<string, Value>>;
  readonly expected: Readonly<Record<string, Value>>;
  readonly tolerance: Tolerance;
  readonly source: string;
  readonly basis: string;
};

const { cases }: { readonly cases: readonly InventoryCase[] } = JSON.parse(
  readFileSync(new URL("./data/inventory-cases.json", import.meta.url), "utf8"),
);

/** A case being checked: reads its input, and holds what was worked out against what is expected. */
export type GivenCase = {
  readonly id: string;
  readonly number: (name: string) => number;
  readonly numbers: (name: string) => readonly number[];
  readonly input: Readonly<Record<string, Value>>;
  /** within the tolerance of the case, for numbers, lists and groups of them */
  readonly meets: (name: string, actual: Value) => void;
  /** whole decisions: to the unit */
  readonly equals: (name: string, actual: Value) => void;
  /** a number of an expected list or group, for a working beside the test */
  readonly expected: Readonly<Record<string, Value>>;
};

/** Which topics each test file answers for; together all topics of the file. */
const TOPICS = {
  "order quantities": [
    "eoq",
    "eoq-cost-at-Q",
    "eoq-with-purchase-and-rop",
    "eoq-planned-backorders",
    "eoq-with-rop-working-days",
    "eoq-sensitivity",
    "quantity-discount-all-units",
    "quantity-discount-incremental",
    "eoq-pack-multiple",
    "eoq-pack-rounding-trap",
    "eoq-pack-tiers-moq",
    "power-of-two",
    "power-of-two-worst-case",
    "joint-replenishment",
    "joint-replenishment-power-of-two",
  ],
  "exact policies": [
    "q-r-penalty-per-unit-short",
    "q-r-exact-cost-normal",
    "q-r-optimum-and-approximations",
    "q-r-poisson-exact",
    "newsvendor-normal",
    "newsvendor-poisson",
    "newsvendor-empirical-pmf",
    "periodic-review-base-stock",
    "s-S-optimal-poisson",
    "s-S-power-approximation",
  ],
  service: [
    "safety-stock-variable-demand",
    "safety-stock-variable-lead-time-only",
    "safety-stock-both-variable",
    "q-r-simple",
    "reorder-point-from-lead-time-distribution",
    "unit-normal-loss",
    "fill-rate-backorders",
    "cycle-service",
    "fill-rate-negative-safety-factor",
    "periodic-review-target-level",
    "fill-rate-periodic-review-exact",
    "undershoot-mean-discrete",
    "undershoot-mean-continuous",
    "lead-time-forecast-error-variance",
    "short-history-safety-stock",
    "negative-binomial-lead-time-demand",
    "lead-time-demand-exact-resampling",
  ],
} as const;

type Part = keyof typeof TOPICS;

/**
 * Tests every case of a part's topics, and that nothing of the file is left out: each topic has its check, each
 * expected figure of each case is compared, and the parts together hold all topics.
 */
export function checkInventoryCases<P extends Part>(
  part: P,
  checks: Readonly<Record<(typeof TOPICS)[P][number], (given: GivenCase) => void>>,
): void {
  const byTopic = new Map<string, (given: GivenCase) => void>(Object.entries(checks));
  const own = cases.filter(({ topic }) => byTopic.has(topic));

  describe(`${part} against published and computed cases`, () => {
    it("leave out no case of the file", () => {
      expect([...byTopic.keys()].toSorted()).toEqual([...TOPICS[part]].toSorted());
      const topics = new Set(cases.map(({ topic }) => topic));
      expect(Object.values(TOPICS).flat().toSorted()).toEqual([...topics].toSorted());
      expect(new Set(own.map(({ topic }) => topic)).size).toBe(byTopic.size);
      expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
    });

    it.each(own)("$id: $topic ($basis; $source)", (each) => {
      const compared = new Set<string>();
      byTopic.get(each.topic)?.(givenCase(each, compared));
      expect([...compared].toSorted()).toEqual(Object.keys(each.expected).toSorted());
    });
  });
}

function givenCase({ id, input, expected, tolerance }: InventoryCase, compared: Set<string>): GivenCase {
  const numbers = (name: string): readonly number[] => {
    const value = input[name];
    if (!Array.isArray(value)) throw new RangeError(`givenCase requires a list of ${id}, got ${name}`);
    return value.map(Number);
  };
  const number = (name: string): number => {
    const value = input[name];
    if (typeof value !== "number") throw new RangeError(`givenCase requires a number of ${id}, got ${name}`);
    return value;
  };
  const wanted = (name: string): Value => {
    const value = expected[name];
    if (value === undefined) throw new RangeError(`givenCase requires a figure of ${id}, got ${name}`);
    compared.add(name);
    return value;
  };
  return {
    id,
    input,
    expected,
    number,
    numbers,
    meets: (name, actual) => expectClose(actual, wanted(name), tolerance, `${id} ${name}`),
    equals: (name, actual) => expect(actual, `${id} ${name}`).toEqual(wanted(name)),
  };
}

function expectClose(actual: Value, wanted: Value, tolerance: Tolerance, label: string): void {
  if (typeof wanted === "number") {
    const allowed = tolerance.abs ?? (tolerance.rel ?? 0) * Math.abs(wanted);
    expect(Math.abs(Number(actual) - wanted), `${label}: ${actual} for ${wanted}`).toBeLessThanOrEqual(
      allowed,
    );
    return;
  }
  const [got, want] = [Object.entries(actual), Object.entries(wanted)];
  expect(got.map(([name]) => name).toSorted(), label).toEqual(want.map(([name]) => name).toSorted());
  const values = new Map<string, Value>(got);
  for (const [name, value] of want) {
    expectClose(values.get(name) ?? Number.NaN, value, tolerance, `${label} ${name}`);
  }
}
