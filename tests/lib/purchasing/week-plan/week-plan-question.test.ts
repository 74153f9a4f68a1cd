import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { shopWeeks } from "#lib/forecast/shop-weeks";
import type { WeekPlanInput } from "#lib/purchasing/week-plan/week-plan-input";
import { PLAN_WEEKS, weekPlanQuestion } from "#lib/purchasing/week-plan/week-plan-question";
import { supplyOutlook } from "#lib/replenishment/supply-outlook";
import type { SupplyOutlookInput } from "#lib/replenishment/weekly-check";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { onTime } from "../../replenishment/on-time";
import { TERMS } from "../../replenishment/shop-terms";
import { supplyForecast } from "../../replenishment/supply-forecast";

// All figures are invented.
const today = day("2026-11-25");
const roll = {
  offerId: "roll",
  supplierId: "marram",
  supplierName: "Marram",
  delivery: onTime(9),
  pack: "roll of 100",
  packAmount: amountOfUnits(100),
  priceMinor: 2000,
  breaks: [{ fromPacks: 3, priceMinor: 1800 }],
  breakKind: "all-units",
  volumeMl: 50_000,
} as const;
const bubble: SupplyOutlookInput = {
  supplyId: "bubble",
  name: "Small bubble",
  unit: "square-foot",
  onHand: amountOfUnits(60),
  countedOn: day("2026-11-20"),
  onOrder: [],
  useByDay: [],
  firstDay: day("2026-06-01"),
  forecast: supplyForecast(21),
  offers: [roll],
  goal: null,
};
const limits = {
  longestCoverWeeks: 26,
  holdingPerMille: 260,
  orderCostMinor: 150,
  weekLimitMinor: null,
  roomMl: null,
};

function planOf(
  changes: Partial<SupplyOutlookInput> = {},
  more: {
    readonly limits?: Partial<WeekPlanInput["limits"]>;
    readonly supply?: Partial<Pick<WeekPlanInput["supplies"][number], "shelfLifeDays" | "lastUseOn">>;
    readonly reviewDays?: number;
    readonly substitutes?: WeekPlanInput["substitutes"];
  } = {},
) {
  const input = { ...bubble, ...changes };
  const terms = { ...TERMS, reviewDays: more.reviewDays ?? 7 };
  const calendar = closedCalendar(terms.closed);
  const weeks = shopWeeks({ firstDay: input.firstDay, today, weekStartsOn: 1, calendar });
  const row = supplyOutlook(input, { terms, today, calendar, weeks });
  const { question, notPlanned } = weekPlanQuestion(
    {
      today,
      terms,
      supplies: [{ input, row, shelfLifeDays: null, lastUseOn: null, ...more.supply }],
      suppliers: [
        { supplierId: "marram", deliveryMinor: 900, freeFromMinor: 9000, leastOrderMinor: null },
        { supplierId: "tern", deliveryMinor: 0, freeFromMinor: null, leastOrderMinor: 2000 },
      ],
      substitutes: more.substitutes ?? [],
      limits: { ...limits, ...more.limits },
    },
    { kind: "cheapest" },
  );
  return { question, notPlanned, row, supply: question.supplies[0] };
}

describe("the question to the purchase plan", () => {
  it("asks for the position to stand above the reorder point at each check", () => {
    const { supply, row } = planOf();
    const point = unitsOf(row.reorderPoint ?? amountOfUnits(0));
    expect(supply?.stock).toBe(60);
    expect(supply?.use).toHaveLength(PLAN_WEEKS);
    expect(supply?.use[0]).toBeCloseTo(21, 9);
    expect(supply?.wanted[0]).toBeCloseTo(point + 0.01 - 21, 9);
    expect(supply?.wanted[12]).toBeCloseTo(point + 0.01 - 21, 9);
  });

  it("counts what comes within the interval at once, what comes later in its week", () => {
    const due = (units: number, on: string) => ({ amount: amountOfUnits(units), expectedOn: day(on) });
    // An order placed at the next check, on 2 Dec, comes on the 11th.
    const { supply } = planOf({
      onOrder: [due(30, "2026-12-11"), due(40, "2026-12-20"), due(5, "2027-06-01")],
    });
    expect(supply?.stock).toBe(90);
    expect(supply?.arrivals.map((units, week) => [week, units]).filter(([, units]) => units !== 0)).toEqual([
      [2, 40],
    ]);
  });

  it("takes only stand-ins between supplies that are planned", () => {
    const own = { fromSupplyId: bubble.supplyId, toSupplyId: bubble.supplyId, ratio: 2 };
    const gone = { fromSupplyId: "gone", toSupplyId: bubble.supplyId, ratio: 2 };
    expect(planOf({}, { substitutes: [gone, own] }).question.substitutes).toEqual([own]);
  });

  it("lets an offer of a slower supplier count later, by whole weeks", () => {
    const slow = {
      ...roll,
      offerId: "slow",
      supplierId: "tern",
      delivery: onTime(20),
      priceMinor: 2400,
      breaks: [],
    };
    const { question } = planOf({ offers: [roll, slow] });
    expect(question.offers.map(({ id, leadWeeks, steps }) => [id, leadWeeks, steps])).toEqual([
      [
        "roll",
        0,
        [
          { fromPacks: 1, priceMinor: 2000 },
          { fromPacks: 3, priceMinor: 1800 },
        ],
      ],
      ["slow", 2, [{ fromPacks: 1, priceMinor: 2400 }]],
    ]);
  });

  it("reckons worth, keeping and room of a use unit from the cheapest pack", () => {
    const { supply, question } = planOf();
    expect(supply?.endValueMinor).toBe(18);
    expect(supply?.holdingMinor).toBeCloseTo((18 * 0.26) / 52, 12);
    expect(supply?.litres).toBe(0.5);
    expect(question.suppliers[0]).toMatchObject({
      deliveryMinor: 900,
      freeFromMinor: 9000,
      handlingMinor: 150,
    });
    expect(question.suppliers[1]?.leastOrderMinor).toBe(2000);
  });

  it("makes being short dearer than two deliveries from a twentieth of a week on", () => {
    const { supply } = planOf();
    expect((supply?.shortMinor ?? 0) * 21 * 0.05).toBeCloseTo(1800, 6);
  });

  it("keeps no more than lasts for the longest cover or the shelf life, but always room for a pack", () => {
    const most = (supply: Parameters<typeof planOf>[1]) => planOf({}, supply).supply?.most[0] ?? Number.NaN;
    // 26 weeks and the 9 days of the lead time.
    expect(most({})).toBeCloseTo((21 * (26 * 7 + 9)) / 7, 6);
    expect(most({ supply: { shelfLifeDays: 70 } })).toBeCloseTo((21 * 79) / 7, 6);
    const point = unitsOf(planOf().row.reorderPoint ?? amountOfUnits(0));
    expect(most({ limits: { longestCoverWeeks: 1 } })).toBeCloseTo(point + 100, 6);
  });

  it("runs a supply down to its last day: no use, no wish and no worth after it", () => {
    const { supply } = planOf({}, { supply: { lastUseOn: addDays(today, 13) } });
    expect(supply?.use.map((units) => Math.round(units))).toEqual([21, 21, ...new Array(11).fill(0)]);
    expect(supply?.wanted.slice(2).every((units) => units <= 0.01)).toBe(true);
    expect(supply?.endValueMinor).toBe(0);
  });

  it("takes a limit a week as a sum up to each week, room with what is still on its way", () => {
    const { question } = planOf({}, { limits: { weekLimitMinor: 5000, roomMl: 200_000 } });
    expect(question.limits.cash.slice(0, 2)).toEqual([
      { throughWeek: 0, minor: 5000 },
      { throughWeek: 1, minor: 10_000 },
    ]);
    expect(question.limits.litres).toBeCloseTo(200 + 0.5 * 27, 9);
  });

  it("orders only in weeks with a check", () => {
    expect(planOf({}, { reviewDays: 14 }).question.suppliers[0]?.orderWeeks.slice(0, 5)).toEqual([
      true,
      false,
      true,
      false,
      true,
    ]);
    expect(planOf({}, { reviewDays: 3 }).question.suppliers[0]?.orderWeeks.every(Boolean)).toBe(true);
  });

  it.each([
    ["not-counted", { onHand: null, countedOn: null }],
    ["no-use", { forecast: null }],
    ["no-offer", { offers: [] }],
    ["no-price", { offers: [{ ...roll, priceMinor: null, breaks: [] }] }],
  ] as const)("leaves a supply out that is %s", (why, changes) => {
    const { question, notPlanned } = planOf(changes);
    expect(question.supplies).toEqual([]);
    expect(notPlanned).toEqual([{ supplyId: "bubble", why }]);
  });
});
