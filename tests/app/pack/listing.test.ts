import { describe, expect, it } from "vitest";
import { listingAnswer } from "#app/pack/listing/listing-answer.ts";
import { listingFinding } from "#app/pack/listing/listing-finding.ts";
import { listingQuestion } from "#app/pack/listing/listing-question.ts";
import { zoneShares } from "#app/pack/listing/zone-shares.ts";
import { promiseSteps } from "#app/pack/promise-steps.ts";
import type { RateCard } from "#lib/postage/rate-card";
import { readRateTable } from "#lib/postage/rate-table";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { SMALL_CHOICES } from "./small-choices";

const table = readRateTable("up to\tNear\n1 lb\t5.00\n2 lb\t7.00", {
  measures: "imperial",
  minorDigits: 2,
  blanks: "noPrice",
});
if (table.kind === "unreadable") throw new TypeError(table.problems.join(" "));
const card: RateCard = {
  service: "Parcels",
  currency: "USD",
  validFrom: day("2026-01-01"),
  validTo: null,
  zones: ["near"],
  bands: [
    { name: "", walls: NO_WALLS, countsSize: false, steps: table.steps, beyond: { kind: "notCarried" } },
  ],
  roundUpTo: null,
  dimensional: null,
  fees: [],
};
const choices = { ...SMALL_CHOICES, steps: promiseSteps(card) };
const zones = [{ zone: "near", share: 1 }];
const NO_PRICES = { masses: new Map(), book: new Map(), replacement: new Map() };
const mug = { itemTypeId: "mug", pieces: 1, style: null, bareMg: null, cartonId: null };

describe("the question at listing time", () => {
  it("is read from the address, in the shop's measures", () => {
    expect(listingQuestion({ type: "mug", bare: "13 oz", pieces: "2", style: "bubble" }, "imperial")).toEqual(
      {
        kind: "asked",
        question: { itemTypeId: "mug", pieces: 2, style: "bubble", bareMg: 368_544, cartonId: null },
      },
    );
    expect(listingQuestion({}, "imperial")).toEqual({ kind: "blank" });
  });

  it("says by field what can't be read", () => {
    const read = listingQuestion({ type: "mug", bare: "light", pieces: "0" }, "metric");
    expect(read.kind === "unreadable" ? Object.keys(read.problems).sort() : []).toEqual(["bare", "pieces"]);
  });
});

describe("the answer at listing time", () => {
  it("has the postage as the steps' prices by their odds", () => {
    const answer = listingAnswer(mug, choices, NO_PRICES, { card, zones });
    // Mug 370 g and a gram for each unit of its card and carton: certainly under 1 lb but for the guess's spread.
    const odds = answer.outlook?.steps[0]?.odds ?? 0;
    expect(answer.postageMinor).toBeCloseTo(500 * odds + 700 * (1 - odds), 0);
    expect(listingFinding(answer, { measures: "imperial", hasSteps: true })).toMatch(
      /^Promise up to 1 lb: 9\d in 100\. A guess/,
    );
  });

  it("goes by the bare weight typed, and by the carton chosen", () => {
    const heavy = listingAnswer({ ...mug, bareMg: 800_000, cartonId: "cube-8" }, choices, NO_PRICES, {
      card,
      zones,
    });
    expect(heavy.outlook?.promise?.label).toBe("2 lb");
    expect(heavy.cartonId).toBe("cube-8");
  });

  it("has the materials of its card and its carton at their cost in the books and bought again", () => {
    // A third of a sheet at 6, 3 ft of tape at 1 and a carton at 80 and at 90, in 1/10,000 cent: 85 and 95.
    const prices = (carton: number) =>
      new Map([
        ["tissue", 60_000],
        ["tape", 10_000],
        ["cube-12", carton],
      ]);
    const terms = { masses: new Map(), book: prices(800_000), replacement: prices(900_000) };
    const { cost } = listingAnswer(mug, choices, terms, { card, zones });
    expect(cost).toEqual({
      book: { cost: 850_000, unknown: [] },
      replacement: { cost: 950_000, unknown: [] },
    });
    expect(listingAnswer(mug, choices, NO_PRICES, { card, zones }).cost.book.unknown).toEqual([
      "tissue",
      "tape",
      "cube-12",
    ]);
  });

  it("says what was never weighed instead of a promise", () => {
    const answer = listingAnswer({ ...mug, itemTypeId: "vase" }, choices, NO_PRICES, { card, zones });
    expect(listingFinding(answer, { measures: "imperial", hasSteps: true })).toBe(
      "No promise yet: Bud vase was never weighed.",
    );
    expect(answer.postageMinor).toBeNull();
  });

  it("names the weights where there is no rate card", () => {
    const answer = listingAnswer(mug, SMALL_CHOICES, NO_PRICES, { card: null, zones: [] });
    expect(listingFinding(answer, { measures: "imperial", hasSteps: false })).toContain("9 times in 10.");
  });
});

describe("shares of the zones", () => {
  it("are those of the parcels, and all alike where none went there", () => {
    const counts = [
      { zoneId: "near", parcels: 3 },
      { zoneId: "near", parcels: 2 },
      { zoneId: "gone", parcels: 9 },
    ];
    expect(zoneShares(["near", "far"], counts)).toEqual({
      zones: [
        { zone: "near", share: 5 },
        { zone: "far", share: 0 },
      ],
      isKnown: true,
    });
    expect(zoneShares(["far"], counts)).toEqual({ zones: [{ zone: "far", share: 1 }], isKnown: false });
  });
});
