import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

// Each case of data/postage-cases.json carries its own source, address and basis; memory and secondary stay marked.

type Value = number | string | boolean | null | readonly Value[];

type PostageCase = {
  readonly id: string;
  readonly input: Readonly<Record<string, Value>>;
  readonly expected: Readonly<Record<string, Value>>;
  readonly tolerance: number;
  readonly source: string;
  readonly opened: boolean;
  readonly basis: string;
};

type Group = "dimensionalWeightRules" | "dimensionalWeight" | "sizeLimits" | "rateStructure";

const CASES: Readonly<Record<Group, readonly PostageCase[]>> = JSON.parse(
  readFileSync(new URL("./data/postage-cases.json", import.meta.url), "utf8"),
);

/** A case being checked: reads its input, and holds what was worked out against what is expected. */
export type GivenCase = {
  readonly id: string;
  readonly has: (name: string) => boolean;
  /** input as text, for exact reading */
  readonly text: (name: string) => string;
  readonly texts: (name: string) => readonly string[];
  /** the expected figure, within the tolerance of the case for numbers */
  readonly meets: (name: string, actual: Value) => void;
  readonly expects: (name: string) => boolean;
  /** a fact that nothing here works out: it is only kept with its case */
  readonly notReckoned: (name: string) => void;
};

/**
 * Tests every case of a group, each with the check whose pattern its id matches: each case has exactly one check, each
 * check has a case, and each expected figure is compared.
 */
export function checkPostageCases(
  group: Group,
  checks: readonly (readonly [pattern: RegExp, check: (given: GivenCase) => void])[],
): void {
  const cases = CASES[group];
  describe(`${group} against published rules and figures`, () => {
    it("leave out no case of the file", () => {
      const found = cases.map(({ id }) => checks.filter(([pattern]) => pattern.test(id)).length);
      expect(found).toEqual(cases.map(() => 1));
      const idle = checks.filter(([pattern]) => !cases.some(({ id }) => pattern.test(id)));
      expect(idle).toEqual([]);
      expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
    });

    it.each(cases)("$id ($basis, page read: $opened; $source)", (each) => {
      const compared = new Set<string>();
      const check = checks.find(([pattern]) => pattern.test(each.id))?.[1];
      check?.(givenCase(each, compared));
      expect([...compared].toSorted()).toEqual(Object.keys(each.expected).toSorted());
    });
  });
}

function givenCase({ id, input, expected, tolerance }: PostageCase, compared: Set<string>): GivenCase {
  const texts = (name: string): readonly string[] => {
    const value = input[name];
    if (value === undefined) throw new RangeError(`givenCase requires an input of ${id}, got ${name}`);
    return Array.isArray(value) ? value.map(String) : [String(value)];
  };
  return {
    id,
    has: (name) => name in input,
    text: (name) => texts(name).join(),
    texts,
    expects: (name) => name in expected,
    notReckoned: (name) => {
      expect(Object.keys(expected)).toContain(name);
      compared.add(name);
    },
    meets: (name, actual) => {
      compared.add(name);
      expectClose(actual, expected[name], tolerance, `${id} ${name}`);
    },
  };
}

function expectClose(actual: Value, wanted: Value | undefined, tolerance: number, label: string): void {
  if (typeof wanted === "number" && typeof actual === "number") {
    const difference = Math.abs(actual - wanted);
    expect(difference, `${label}: ${actual} for ${wanted}`).toBeLessThanOrEqual(tolerance);
    return;
  }
  expect(actual, label).toEqual(wanted);
}
