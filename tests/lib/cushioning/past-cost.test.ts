import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pastCost, type SentKind } from "#lib/cushioning/past-cost";
import { wayCost } from "#lib/cushioning/way-cost";
import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import { BUBBLE, PAPER, plainCost, TERMS } from "./small-ways";

const BOTH: readonly CushionStyle[] = ["paper", "bubble"];
const COSTS = [plainCost("paper", 900), plainCost("bubble", 800)];

function sent(change: Partial<SentKind>): SentKind {
  return { parcels: 1, style: "paper", zone: null, costs: COSTS, ...change };
}

describe("what past parcels would have cost", () => {
  it("is told as they were packed, all in each style, and each in its cheapest way", () => {
    const dear = [plainCost("paper", 500), plainCost("bubble", 650)];
    const past = pastCost([sent({ parcels: 3 }), sent({ parcels: 2, style: "bubble", costs: dear })], BOTH);
    expect(past).toEqual({
      parcels: 5,
      asPackedMinor: 3 * 900 + 2 * 650,
      allMinor: new Map([
        ["paper", 3 * 900 + 2 * 500],
        ["bubble", 3 * 800 + 2 * 650],
      ]),
      bestMinor: 3 * 800 + 2 * 500,
      otherStyle: 5,
      leftOut: 0,
    });
  });

  it("takes the postage of the zone where one was noted, else the mean of all", () => {
    const costs = [PAPER, BUBBLE].map((way) => wayCost(way, TERMS, null));
    const of = (zone: string | null) => pastCost([sent({ zone, costs })], BOTH);
    // Paper's materials 180; under 2 lb with 0.1587 (normal table): near 700 or 900, far 1,200 or 1,600.
    expect(of("near").asPackedMinor).toBeCloseTo(180 + 900 - 0.1587 * 200, 1);
    expect(of("far").asPackedMinor).toBeCloseTo(180 + 1_600 - 0.1587 * 400, 1);
    expect(of(null).asPackedMinor).toBeCloseTo(180 + 1_075 - 0.1587 * 250, 1);
    expect(of("closed since").asPackedMinor).toBeCloseTo(180 + 1_075 - 0.1587 * 250, 1);
    // Bubble's materials 200; under 2 lb with 0.9772.
    expect(of("far").bestMinor).toBeCloseTo(200 + 1_600 - 0.9772 * 400, 1);
  });

  it("has another cheapest way where a zone's steps cost next to nothing", () => {
    const [band, ...others] = TERMS.card?.bands ?? [];
    if (TERMS.card === null || band === undefined) throw new RangeError("the terms have a card");
    // Near costs the same at any weight: there paper's cheaper materials win, 180 against 200.
    const steps = band.steps.map((step) => ({
      ...step,
      prices: [band.steps[0]?.prices[0] ?? null, step.prices[1] ?? null],
    }));
    const card = { ...TERMS.card, bands: [{ ...band, steps }, ...others] };
    const costs = [PAPER, BUBBLE].map((way) => wayCost(way, { ...TERMS, card }, null));
    const past = pastCost([sent({ zone: "near", costs }), sent({ zone: "far", costs, parcels: 4 })], BOTH);
    expect(past.otherStyle).toBe(4);
    expect(past.bestMinor).toBeLessThan(Math.min(...past.allMinor.values()));
  });

  it("leaves out parcels without a recipe in the style in which they were packed", () => {
    const past = pastCost(
      [sent({ style: "mixed", parcels: 6 }), sent({ costs: [], parcels: 2 }), sent({})],
      BOTH,
    );
    expect(past).toMatchObject({ parcels: 1, leftOut: 8, asPackedMinor: 900, bestMinor: 800 });
  });

  it("leaves a kind as it was packed where it has no recipe in the style asked for", () => {
    const past = pastCost([sent({ costs: [plainCost("paper", 900)], parcels: 2 })], BOTH);
    expect([...past.allMinor.values()]).toEqual([1_800, 1_800]);
    expect(past.otherStyle).toBe(0);
    // Even where a third way would be cheaper.
    const mixed = [plainCost("paper", 900), plainCost("mixed", 700)];
    expect(pastCost([sent({ costs: mixed })], BOTH)).toMatchObject({
      allMinor: new Map([
        ["paper", 900],
        ["bubble", 900],
      ]),
      bestMinor: 700,
    });
  });

  it("is nothing without parcels", () => {
    expect(pastCost([], BOTH)).toMatchObject({ parcels: 0, asPackedMinor: 0, bestMinor: 0 });
  });

  it("is never more in the cheapest way of each than as packed or all in one style", () => {
    const total = fc.double({ min: 0, max: 5_000, noNaN: true });
    const kind = fc
      .tuple(total, total, total, fc.constantFrom(...CUSHION_STYLES), fc.integer({ min: 0, max: 90 }))
      .map(([paper, bubble, mixed, style, parcels]) =>
        sent({
          style,
          parcels,
          costs: [plainCost("paper", paper), plainCost("bubble", bubble), plainCost("mixed", mixed)],
        }),
      );
    fc.assert(
      fc.property(fc.array(kind, { maxLength: 10 }), (kinds) => {
        const { bestMinor, asPackedMinor, allMinor, otherStyle, parcels } = pastCost(kinds, CUSHION_STYLES);
        expect(bestMinor).toBeLessThanOrEqual(asPackedMinor + 1e-6);
        for (const all of allMinor.values()) expect(bestMinor).toBeLessThanOrEqual(all + 1e-6);
        expect(otherStyle).toBeLessThanOrEqual(parcels);
        if (otherStyle === 0) expect(bestMinor).toBeCloseTo(asPackedMinor, 6);
      }),
    );
  });
});
