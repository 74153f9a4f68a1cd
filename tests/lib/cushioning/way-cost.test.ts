import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wayCost } from "#lib/cushioning/way-cost";
import { day } from "#lib/units/day";
import { BUBBLE, bell, GRAM, PAPER, POUND, TERMS, UP_TO_FOUR, wayOf } from "./small-ways";

describe("what a parcel costs in one way", () => {
  it("is what buying its materials again costs, beside their cost in the books", () => {
    const cost = wayCost(PAPER, TERMS, null);
    // 10 sheets x 8 c + 1 carton x 100 c; in the books 10 x 7 c + 90 c
    expect(cost.materialsMinor).toBeCloseTo(180, 9);
    expect(cost.bookMinor).toBeCloseTo(160, 9);
  });

  it("has the postage expected over its weight and the zones", () => {
    // Up to 2 lb 700 near and 1,200 far: 0.75 x 700 + 0.25 x 1,200 = 825; up to 3 lb 900 and 1,600: 1,075.
    // Paper is one deviation over 2 lb: 0.1587 of the parcels stay under (normal table): 1,075 - 0.1587 x 250.
    expect(wayCost(PAPER, TERMS, null).postageMinor).toBeCloseTo(1_035.325, 1);
    // Bubble is two under: 0.9772.
    const bubble = wayCost(BUBBLE, TERMS, null);
    expect(bubble.postageMinor).toBeCloseTo(830.7, 1);
    expect(bubble.postage?.zones.map(({ zone }) => zone)).toEqual(["near", "far"]);
    expect(bubble.postage?.zones[0]?.minor).toBeCloseTo(900 - 0.9772 * 200, 1);
    expect(bubble.postage?.zones[1]?.minor).toBeCloseTo(1_600 - 0.9772 * 400, 1);
  });

  it("adds materials and postage up where nothing else is said", () => {
    const { materialsMinor, postageMinor, totalMinor, minutesMinor, breakageMinor } = wayCost(
      BUBBLE,
      TERMS,
      5_000,
    );
    expect(totalMinor).toBeCloseTo(materialsMinor + (postageMinor ?? Number.NaN), 9);
    expect([minutesMinor, breakageMinor]).toEqual([null, null]);
  });

  it("counts the packer's time where an hour has a price and the style has minutes", () => {
    const minutes = { paper: 5, bubble: 4, mixed: null };
    // 5 minutes of an hour of 24.00 are 2.00
    expect(wayCost(PAPER, { ...TERMS, hourMinor: 2_400, minutes }, null).minutesMinor).toBeCloseTo(200, 9);
    expect(wayCost(BUBBLE, { ...TERMS, hourMinor: 2_400, minutes }, null).minutesMinor).toBeCloseTo(160, 9);
    expect(wayCost(PAPER, { ...TERMS, minutes }, null).minutesMinor).toBeNull();
    expect(wayCost(PAPER, { ...TERMS, hourMinor: 2_400 }, null).minutesMinor).toBeNull();
  });

  it("counts what breaks as its rate times the value and both postages: common practice, no source", () => {
    const terms = { ...TERMS, brokenPerMille: { paper: 10, bubble: null, mixed: null } };
    const cost = wayCost(PAPER, terms, 5_000);
    // 1 in 100 of 50.00 and of twice 10.35
    expect(cost.breakageMinor).toBeCloseTo(0.01 * (5_000 + 2 * 1_035.325), 1);
    expect(cost.totalMinor).toBeCloseTo(180 + 1_035.325 + 70.7065, 1);
    expect(wayCost(PAPER, terms, null).breakageMinor).toBeNull();
    expect(wayCost(BUBBLE, terms, 5_000).breakageMinor).toBeNull();
    expect(wayCost(PAPER, { ...terms, card: null }, 5_000).breakageMinor).toBeCloseTo(50, 9);
  });

  it("names supplies without a price and takes them for nothing", () => {
    const replacement = new Map([["carton", 1_000_000]]);
    const nulled = new Map<string, number | null>([...replacement, ["sheets", null]]);
    for (const prices of [replacement, nulled]) {
      const cost = wayCost(PAPER, { ...TERMS, replacement: prices }, null);
      expect(cost.unpriced).toEqual(["sheets"]);
      expect(cost.materialsMinor).toBeCloseTo(100, 9);
    }
    expect(wayCost(PAPER, TERMS, null).unpriced).toEqual([]);
  });

  it.each([
    ["no card", { ...TERMS, card: null }, PAPER],
    ["no zone", { ...TERMS, zones: [] }, PAPER],
    ["no weight", TERMS, { ...PAPER, weight: null }],
    ["a card that does not hold on the day", { ...TERMS, shipDay: day("2025-12-31") }, PAPER],
    ["a zone that is not on the card", { ...TERMS, zones: [{ zone: "moon", share: 1 }] }, PAPER],
  ])("has no postage with %s, and it is not said to be nothing", (_, terms, way) => {
    const cost = wayCost(way, terms, null);
    expect([cost.postage, cost.postageMinor]).toEqual([null, null]);
    expect(cost.totalMinor).toBeCloseTo(180, 9);
  });

  it("has no price of postage for what the card does not carry", () => {
    const cost = wayCost({ ...PAPER, weight: bell(9 * POUND) }, { ...TERMS, card: UP_TO_FOUR }, null);
    expect(cost.postageMinor).toBeNull();
    expect(cost.postage?.notCarried).toBeCloseTo(1, 9);
  });

  it("takes the room that is written down, and none where nothing is", () => {
    const litres = new Map([
      ["sheets", 0.2],
      ["carton", 1.5],
    ]);
    expect(wayCost(PAPER, { ...TERMS, litres }, null).litres).toBeCloseTo(10 * 0.2 + 1.5, 9);
    expect(wayCost(BUBBLE, { ...TERMS, litres }, null).litres).toBeCloseTo(1.5, 9);
    expect(wayCost(BUBBLE, { ...TERMS, litres: new Map() }, null).litres).toBeNull();
  });

  it("tells the share of paper and board by weight", () => {
    // 4 sq ft x 8 g of bubble beside a carton of 200 g
    expect(wayCost(BUBBLE, TERMS, null).paperShare).toBeCloseTo(200 / 232, 9);
    expect(wayCost(PAPER, TERMS, null).paperShare).toBe(1);
    expect(wayCost(PAPER, { ...TERMS, supplyMasses: new Map() }, null).paperShare).toBeNull();
  });

  it("never pays less postage for more weight on a card whose prices rise", () => {
    const postageAt = (grams: number, deviation: number) =>
      wayCost(wayOf("paper", {}, { weight: bell(grams * GRAM, deviation * GRAM) }), TERMS, null).postageMinor;
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 4_000 }),
        fc.integer({ min: 1, max: 800 }),
        fc.integer({ min: 1, max: 300 }),
        (grams, more, deviation) => {
          const [light, heavy] = [postageAt(grams, deviation), postageAt(grams + more, deviation)];
          expect(light).toBeGreaterThanOrEqual(500);
          expect((heavy ?? Number.NaN) - (light ?? Number.NaN)).toBeGreaterThanOrEqual(-1e-6);
        },
      ),
      { numRuns: 150 },
    );
  });
});
