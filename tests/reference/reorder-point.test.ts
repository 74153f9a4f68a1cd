import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { expectedUse } from "#lib/forecast/use-path";
import { safetyStock, serviceFactor } from "#lib/replenishment/safety-stock";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { studentTQuantile } from "#lib/statistics/student-t-quantile";
import { addDays, day } from "#lib/units/day";

// Each case of data/inventory-cases.json carries its own source and address; quantiles from R 4.2.2.
type Numbers = Record<string, number>;
type Case = { id: string; input: Numbers; expected: Numbers; tolerance: { abs?: number; rel?: number } };
const read = (name: string) => JSON.parse(readFileSync(new URL(`./data/${name}`, import.meta.url), "utf8"));
const cases: readonly Case[] = read("inventory-cases.json").cases;
const quantiles: {
  normal: { p: number[]; quantile: number[] };
  studentT: { df: number; p: number[]; quantile: number[] }[];
} = read("quantiles.json");

function given(id: string) {
  const found = cases.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`given requires a case of the file, got ${id}`);
  const number = (kind: "input" | "expected") => (name: string) => {
    const value = found[kind][name];
    if (value === undefined) throw new RangeError(`given requires a number of ${id}, got ${name}`);
    return value;
  };
  const expected = number("expected");
  const meets = (name: string, actual: number) => {
    const allowed = found.tolerance.abs ?? (found.tolerance.rel ?? 0) * Math.abs(expected(name));
    expect(Math.abs(actual - expected(name))).toBeLessThanOrEqual(allowed);
  };
  return { input: number("input"), meets };
}

const FIRST = day("2026-11-23");
const expectedOver = (perWeek: number, days: number) =>
  expectedUse({ firstWeek: FIRST, perWeek: [perWeek] }, { from: FIRST, until: addDays(FIRST, days) }, []);

describe("quantiles against R", () => {
  it("the normal quantile agrees to 1e-9", () => {
    expect(quantiles.normal.p).toHaveLength(22);
    quantiles.normal.p.forEach((p, index) => {
      expect(Math.abs(normalQuantile(p) - (quantiles.normal.quantile[index] ?? Number.NaN))).toBeLessThan(
        1e-9,
      );
    });
  });

  it.each(quantiles.studentT)("the t quantile with $df degrees agrees to 1e-9", ({ df, p, quantile }) => {
    expect(p).toHaveLength(4);
    p.forEach((each, index) => {
      expect(Math.abs(studentTQuantile(each, df) - (quantile[index] ?? Number.NaN))).toBeLessThan(1e-9);
    });
  });
});

describe("safety stock and reorder point against published cases", () => {
  it("rop-001: demand varies, 30 a day for 10 days", () => {
    const { input, meets } = given("rop-001");
    const safety = safetyStock(input("z"), input("sdPerDay") * Math.sqrt(input("leadTimeDays")));
    meets("safetyStock", safety);
    const expected = expectedOver(7 * input("meanPerDay"), input("leadTimeDays"));
    meets("reorderPoint", expected + safety);
  });

  it("rop-002: only the delivery time varies", () => {
    const { input, meets } = given("rop-002");
    const deviation = input("meanPerDay") * input("sdLeadTimeDays");
    const safety = safetyStock(serviceFactor(input("cycleService")), deviation);
    meets("safetyStock", safety);
    const expected = expectedOver(7 * input("meanPerDay"), input("leadTimeDays"));
    meets("reorderPoint", expected + safety);
  });

  it("rop-003: both vary", () => {
    const { input, meets } = given("rop-003");
    const demand = input("leadTimeDays") * input("sdPerDay") ** 2;
    const delivery = input("meanPerDay") ** 2 * input("sdLeadTimeDays") ** 2;
    meets("safetyStock", safetyStock(input("z"), Math.sqrt(demand + delivery)));
  });

  it("rop-004: 33 a day for 14 days at 95 %", () => {
    const { input, meets } = given("rop-004");
    const safety = safetyStock(
      serviceFactor(input("cycleService")),
      input("sdPerDay") * Math.sqrt(input("leadTimeDays")),
    );
    meets("safetyStock", safety);
    const expected = expectedOver(7 * input("meanPerDay"), input("leadTimeDays"));
    meets("leadTimeDemand", expected);
    meets("reorderPoint", expected + safety);
  });

  it("rop-005: a shortage in one of 100 intervals", () => {
    const { input, meets } = given("rop-005");
    const safety = safetyStock(serviceFactor(1 - input("stockoutRisk")), input("sdLT"));
    meets("safetyStock", safety);
    meets("reorderPoint", input("meanLT") + safety);
  });

  it("p1-001: 98 % of the intervals", () => {
    const { input, meets } = given("p1-001");
    const factor = serviceFactor(input("cycleService"));
    meets("k", factor);
    meets("reorderPoint", input("meanLT") + safetyStock(factor, input("sdLT")));
  });

  it("rs-001: the protection interval is lead time and one review period", () => {
    const { input, meets } = given("rs-001");
    const periods = input("leadTimePeriods") + 1;
    const service = input("p") / (input("p") + input("h"));
    const safety = safetyStock(serviceFactor(service), input("sd") * Math.sqrt(periods));
    meets("S", input("mean") * periods + safety);
  });

  it("rs-002: a review every four weeks", () => {
    const { input, meets } = given("rs-002");
    const level = (weeks: number) =>
      expectedOver(input("meanPerWeek"), 7 * weeks) +
      safetyStock(input("z"), input("sdPerWeek") * Math.sqrt(weeks));
    meets("continuousReorderPoint", level(input("leadTimeWeeks")));
    meets("targetLevel", level(input("leadTimeWeeks") + input("reviewWeeks")));
  });
});
