import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

// Each case of a data file carries its own source, address and basis; memory and secondary stay marked.

export type Value = number | string | boolean | null | readonly Value[];

export type PublishedCase = {
  readonly id: string;
  readonly input: Readonly<Record<string, Value>>;
  readonly expected: Readonly<Record<string, Value>>;
  /** absolute, or relative to the expected figure */
  readonly tolerance: number | { readonly rel: number };
  readonly source: string;
  readonly opened: boolean;
  readonly basis: string;
};

/** A case being checked: reads its input, and holds what was worked out against what is expected. */
export type GivenCase = {
  readonly id: string;
  readonly has: (name: string) => boolean;
  /** input as text, for exact reading */
  readonly text: (name: string) => string;
  readonly texts: (name: string) => readonly string[];
  readonly number: (name: string) => number;
  readonly numbers: (name: string) => readonly number[];
  /** the expected figure, within the tolerance of the case for numbers */
  readonly meets: (name: string, actual: Value) => void;
  readonly expects: (name: string) => boolean;
  /** a fact that nothing here works out: it is only kept with its case */
  readonly notReckoned: (name: string) => void;
};

/** The cases of a data file by group. */
export function readCases<Group extends string>(
  file: string,
): Readonly<Record<Group, readonly PublishedCase[]>> {
  return JSON.parse(readFileSync(new URL(`./data/${file}`, import.meta.url), "utf8"));
}

/**
 * Tests every case of a group, each with the check whose pattern its id matches: each case has exactly one check, each
 * check has a case, and each expected figure is compared.
 */
export function checkPublishedCases(
  title: string,
  cases: readonly PublishedCase[],
  checks: readonly (readonly [pattern: RegExp, check: (given: GivenCase) => void])[],
): void {
  describe(`${title} against published rules and figures`, () => {
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

function givenCase({ id, input, expected, tolerance }: PublishedCase, compared: Set<string>): GivenCase {
  const values = (name: string): readonly Value[] => {
    const value = input[name];
    if (value === undefined) throw new RangeError(`givenCase requires an input of ${id}, got ${name}`);
    return Array.isArray(value) ? value : [value];
  };
  const texts = (name: string) => values(name).map(String);
  const numbers = (name: string) => values(name).map(Number);
  return {
    id,
    has: (name) => name in input,
    text: (name) => texts(name).join(),
    texts,
    number: (name) => numbers(name)[0] ?? Number.NaN,
    numbers,
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

function expectClose(
  actual: Value,
  wanted: Value | undefined,
  tolerance: PublishedCase["tolerance"],
  label: string,
): void {
  if (typeof wanted === "number" && typeof actual === "number") {
    const allowed = typeof tolerance === "number" ? tolerance : tolerance.rel * Math.abs(wanted);
    const difference = Math.abs(actual - wanted);
    expect(difference, `${label}: ${actual} for ${wanted}`).toBeLessThanOrEqual(allowed);
    return;
  }
  expect(actual, label).toEqual(wanted);
}
