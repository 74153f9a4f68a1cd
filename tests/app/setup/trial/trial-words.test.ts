import { describe, expect, it } from "vitest";
import { leansOn } from "#app/setup/trial/leans-on.ts";
import { moneyWords } from "#app/setup/trial/money-words.ts";
import { furtherRows, mainRows } from "#app/setup/trial/trial-rows.ts";
import { trialFinding } from "#app/setup/trial/trial-words.ts";
import type { Estimate } from "#lib/replenishment/simulation/estimate";
import type { TrialFigures } from "#lib/replenishment/trial/trial-figures";
import type { TrialResult } from "#lib/replenishment/trial/trial-steps";
import { day } from "#lib/units/day";
import type { Shop } from "#prisma/records/shop";

const PRESENT = { promise: { goal: "cycles", perMille: 950 }, coverWeeks: 6, reviewDays: 7 } as const;
const money = moneyWords({ currency: "USD", minorDigits: 2 });
const sure = (mean: number, standardError = 0): Estimate => ({ mean, standardError });

function figures(changes: Partial<TrialFigures> = {}): TrialFigures {
  return {
    daysOut: sure(2),
    orders: sure(10),
    deliveryCost: sure(9_000),
    goodsCost: sure(70_000),
    priceGap: sure(0),
    meanValue: sure(40_000),
    peakValue: sure(60_000),
    meanLitres: sure(0),
    cost: sure(10_000),
    cycleService: sure(0.95),
    filledShare: sure(0.99),
    ...changes,
  };
}

function result(difference: Partial<TrialFigures>, span: Partial<TrialResult["span"]> = {}): TrialResult {
  const shop = {
    present: figures(),
    tried: figures({ daysOut: sure(4.06) }),
    difference: figures(difference),
  };
  return {
    span: { kind: "coming", firstDay: day("2026-11-25"), days: 91, ...span },
    runs: 100,
    shop,
    supplies: [],
    leftOut: [],
    verdict: { cheaper: "alike", safer: "alike" },
  };
}

const finding = (
  found: TrialResult,
  tried: Partial<typeof PRESENT> | Parameters<typeof trialFinding>[0]["tried"],
) =>
  trialFinding({
    present: PRESENT,
    tried: { ...PRESENT, ...tried },
    result: found,
    keepingShare: 0.05,
    orderCost: 0,
    money,
  });

const nothing = { daysOut: sure(0), meanValue: sure(0), deliveryCost: sure(0), orders: sure(0) };

describe("the finding of a trial", () => {
  const cheaper = result({
    ...nothing,
    cost: sure(-2_000, 200),
    deliveryCost: sure(-2_100),
    daysOut: sure(2, 0.3),
  });

  it("says what is tried, what it costs and for what, and how often supplies are missing", () => {
    expect(finding(cheaper, { ...PRESENT, reviewDays: 14 })).toBe(
      "Looking every 14 days would cost about $20 less in 13 weeks, mostly for delivery, and leave supplies missing on 4.1 days instead of 2.",
    );
  });

  it("names the setting that is changed, or all of them", () => {
    expect(finding(cheaper, { ...PRESENT, reviewDays: 1 })).toMatch(/^Looking every day would/);
    expect(finding(cheaper, { ...PRESENT, coverWeeks: 1 })).toMatch(/^Ordering for 1 week would/);
    expect(finding(cheaper, { ...PRESENT, promise: { goal: "share", perMille: 980 } })).toMatch(
      /^Stock that is to fill 98 of 100 from stock would/,
    );
    expect(finding(cheaper, { ...PRESENT, coverWeeks: 3, reviewDays: 3 })).toMatch(
      /^The settings to try would/,
    );
  });

  it("calls alike what is within two standard errors", () => {
    const tried = { ...PRESENT, reviewDays: 14 };
    expect(finding(result({ ...nothing, cost: sure(-390, 200), daysOut: sure(0.5, 0.3) }), tried)).toBe(
      "Looking every 14 days would make no difference beyond chance, in cost or in days without a supply.",
    );
    expect(finding(result({ ...nothing, cost: sure(-390, 200), daysOut: sure(2, 0.3) }), tried)).toMatch(
      /would cost as much, as far as can be told, and leave supplies missing on 4.1 days/,
    );
    expect(finding(result({ ...nothing, cost: sure(600, 200), meanValue: sure(12_000) }), tried)).toBe(
      "Looking every 14 days would cost about $6 more in 13 weeks, mostly for keeping stock, and leave supplies missing on as many days as now.",
    );
  });

  it("speaks of the past as past", () => {
    const past = result({ ...nothing, cost: sure(-2_000), daysOut: sure(2) }, { kind: "past", days: 364 });
    expect(finding(past, { ...PRESENT, reviewDays: 14 })).toBe(
      "Looking every 14 days would have cost about $20 less in 52 weeks, and left supplies missing on 4.1 days instead of 2.",
    );
  });
});

describe("the figures of a trial", () => {
  it("are six, each with its two standard errors and whether chance could make the difference", () => {
    const { shop } = result({ ...nothing, cost: sure(-2_000, 150), filledShare: sure(-0.004, 0.003) });
    const rows = mainRows(shop, money);
    expect(rows).toHaveLength(6);
    expect(rows.at(-1)).toMatchObject({
      present: { value: "$100", within: "±\u00a0$0" },
      difference: { value: "−$20", within: "±\u00a0$3", isChance: false },
    });
    expect(rows[1]?.difference).toEqual({
      value: "−0.4\u00a0points",
      within: "±\u00a00.6\u00a0points",
      isChance: true,
    });
    expect(rows[2]?.difference.value).toBe("0.0");
  });

  it("leave out what is not known", () => {
    const { shop } = result({});
    const labels = furtherRows(shop, { money, hasRoom: false }).map(({ label }) => label);
    expect(labels).not.toContain("Room taken");
    expect(furtherRows(shop, { money, hasRoom: true }).map(({ label }) => label)).toContain("Room taken");
    const without = { ...shop, present: figures({ cycleService: null }) };
    expect(furtherRows(without, { money, hasRoom: false })).toHaveLength(labels.length - 1);
  });
});

describe("money of an estimate", () => {
  it("has coins only where it is little, and what stands beside it is", () => {
    expect([money(-1_234.4), money(199), money(0), money(250, 5_000)]).toEqual([
      "$12",
      "$1.99",
      "$0.00",
      "$3",
    ]);
    expect(moneyWords({ currency: "JPY", minorDigits: 0 })(7)).toBe("¥7");
  });
});

describe("what a trial leans on", () => {
  const shop = { holdingPerMille: 200, orderCostMinor: 0 } as Shop;

  it("names the guesses, what is left out and whose goals stay", () => {
    const found: TrialResult = {
      ...result({}),
      leftOut: [
        { name: "Tape", reason: "not-counted" },
        { name: "Crate", reason: "no-price" },
      ],
    };
    const words = leansOn(found, shop, money).join("\n");
    expect(words).toContain(
      "keeping stock costs 20 % of its worth a year, and the work of an order nothing.",
    );
    expect(words).toContain(
      "Left out: Tape (never counted: count it first); Crate (no offer with a price: add one on its page).",
    );
    expect(words).not.toContain("goal of its own");
    const priced = leansOn(result({}, { kind: "past" }), { ...shop, orderCostMinor: 1_200 }, money).join(
      "\n",
    );
    expect(priced).toContain("the work of an order $12.");
    expect(priced).toContain("as it was recorded");
  });
});
