import { describe, expect, it } from "vitest";
import { oddsWords } from "#app/pack/odds-words.ts";
import { promiseSteps } from "#app/pack/promise-steps.ts";
import { weightOutlook } from "#app/pack/weight-outlook.ts";
import { readRateTable } from "#lib/postage/rate-table";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { milligrams } from "#lib/units/mass";
import { SMALL_CHOICES } from "./small-choices";

const table = readRateTable("up to\tNear\n2 lb\t7.00\n1 lb\t5.00\n15.999 oz\t4.00", {
  measures: "imperial",
  minorDigits: 2,
  blanks: "noPrice",
});
if (table.kind === "unreadable") throw new TypeError(table.problems.join(" "));
const steps = promiseSteps({
  service: "Parcels",
  currency: "USD",
  validFrom: day("2026-01-01"),
  validTo: null,
  zones: table.zones,
  bands: [
    { name: "", walls: NO_WALLS, countsSize: false, steps: table.steps, beyond: { kind: "notCarried" } },
  ],
  roundUpTo: null,
  dimensional: null,
  fees: [],
});
const draft = {
  pieces: [{ itemTypeId: "mug", pieces: 1 }],
  cartons: [{ supplyId: "cube-8", sizes: "", cut: "" }],
  style: "paper" as const,
};

describe("the steps that can be promised", () => {
  it("are those of the card, the lightest first, each in its own unit", () => {
    expect(steps.map(({ label }) => label)).toEqual(["15.999 oz", "1 lb", "2 lb"]);
    expect(steps[1]?.mg).toBeCloseTo(453_592.37, 6);
    expect(promiseSteps(null)).toEqual([]);
  });
});

describe("what the parcel on the bench may weigh", () => {
  const choices = { ...SMALL_CHOICES, steps };

  it("has odds for each step and the lowest one that is sure enough", () => {
    const outlook = weightOutlook(draft, { kind: "expected", mg: milligrams(420_000) }, choices);
    // A guess: a tenth more, and at least 50 g, holds nine in ten. So 470 g, which is over 1 lb.
    expect(outlook?.weight.guess).toBe(true);
    expect(outlook?.mostMg).toBeCloseTo(470_000, -3);
    expect(outlook?.promise?.label).toBe("2 lb");
    const odds = outlook?.steps.map((step) => step.odds) ?? [];
    expect(odds[1]).toBeGreaterThan(0.75);
    expect(odds[1]).toBeLessThan(0.85);
    expect(odds).toEqual([...odds].sort((one, other) => one - other));
  });

  it("is not told where a part has no mass", () => {
    const unknown = { kind: "part-known", knownMg: milligrams(1), unknown: ["Bud vase"] } as const;
    expect(weightOutlook(draft, unknown, choices)).toBeNull();
    expect(weightOutlook(draft, { kind: "expected", mg: milligrams(0) }, choices)).toBeNull();
  });
});

describe("odds in words", () => {
  it("claim no more than they bear", () => {
    expect([0.973, 0.9, 0.9999, 0.001].map(oddsWords)).toEqual([
      "97 in 100",
      "90 in 100",
      "more than 99 in 100",
      "hardly any",
    ]);
  });
});
