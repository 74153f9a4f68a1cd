import { describe, expect, it } from "vitest";
import { fitsForm, rateCardFields } from "#app/postage/rate-card-fields.ts";
import { rateCardForm, withZoneIds, withZoneNames } from "#app/postage/rate-card-form.ts";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { exact, typed as measure, plainBand, plainCard, stepUpTo } from "../../lib/postage/rate-card-fixture";
import { SHOP } from "../buying/order-fixture";

const zones = [
  { id: "near", name: "Near", retired: false, position: 0 },
  { id: "far", name: "Far", retired: false, position: 1 },
];
const form = rateCardForm(SHOP, zones);
const typed = { service: "Parcels", validFrom: "2026-01-01", table: "up to  far  Near\n8 oz  5.20  4.60" };

const problemsOf = (changes: Record<string, string>) => {
  const read = form.safeParse({ ...typed, ...changes });
  return read.success ? [] : read.error.issues.map((issue) => `${issue.path.join(".")}: ${issue.message}`);
};

describe("a rate card as typed", () => {
  it("is kept with the zone of each column, whatever the case of its letters", () => {
    const { card, source, readOn } = form.parse(typed);
    expect(card).toMatchObject({
      service: "Parcels",
      validFrom: "2026-01-01",
      validTo: null,
      zones: ["far", "near"],
    });
    expect(card.bands[0]?.steps.map(({ prices }) => prices)).toEqual([[520, 460]]);
    expect([source, readOn]).toEqual([null, null]);
    expect(form.parse({ ...typed, validTo: "2026-06-30" }).card.validTo).toBe("2026-06-30");
    const sourced = form.parse({ ...typed, source: "the list of 1 July", readOn: "2026-07-03" });
    expect([sourced.source, sourced.readOn]).toEqual(["the list of 1 July", "2026-07-03"]);
  });

  it("names zones that the shop does not have, and those that it has", () => {
    expect(problemsOf({ table: "up to  Moon\n8 oz  5.20" })).toEqual([
      "table: “Moon” is no zone of yours. The zones are Near, Far: rename the column, or add the zone.",
    ]);
  });

  it("names rows that can't be read, are half filled or out of order, and days that contradict", () => {
    expect(problemsOf({ table: "up to  Near\n8 oz  dear" })[0]).toContain(
      "table: Row 2: 8 oz: “dear” for Near is no price.",
    );
    expect(problemsOf({ table: "up to\tNear\tFar\n8 oz\t4.60\t5.20\n1 lb\t6.10\t" })).toEqual([
      "table: Row 3: 1 lb: the price for Far is missing. Type it, or a dash where the carrier gives none.",
    ]);
    expect(problemsOf({ table: "up to\tNear\tFar\n8 oz\t4.60\t" })).toEqual([
      "table: No price stands under Far. Type them, or take the column out.",
    ]);
    expect(problemsOf({ table: "up to  Near\n1 lb  6.00\n8 oz  4.60" })).toEqual([
      "table: Row 3: up to 8 oz: it is not heavier than the step before, 1 lb. Mend it or sort the steps.",
    ]);
    expect(problemsOf({ table: "up to  Near\n8 oz  1\n1 lb  1  2" })[0]).toContain(
      "table: Row 3: it has 2 prices for 1 zones.",
    );
    expect(problemsOf({ validTo: "2025-12-31" })[0]).toContain(
      "service: The last day 2025-12-31 is before the first",
    );
    expect(problemsOf({ validFrom: "July" })[0]).toContain("validFrom: “July” for from can't be read.");
    expect(problemsOf({ service: " " })).toHaveLength(1);
  });

  it("names the field of a limit, of the rule for size and of a fee that can't be read", () => {
    expect(problemsOf({ longest: "22" })[0]).toContain("longest: “22” for longest side can't be read.");
    expect(problemsOf({ heaviest: "heavy" })[0]).toContain("heaviest: ");
    expect(problemsOf({ divisor: "139" })[0]).toContain("divisor: “139” for divisor can't be read.");
    expect(problemsOf({ moreThan: "1728 in³" })[0]).toContain("moreThan: a rule for size needs its divisor");
    expect(problemsOf({ divisor: "139 in³ per lb", eachSide: "up" })[0]).toContain(
      "eachSide: “up” for each side",
    );
    expect(problemsOf({ fees: "Long: 4.50\nlarge" })[0]).toContain("fees: “large” is no fee.");
    expect(problemsOf({ weightUpTo: "0 lb" })).toHaveLength(1);
  });

  it("comes back from the fields that it fills, whatever a form can say", () => {
    const card = plainCard({
      currency: "USD",
      zones: ["near", "far"],
      bands: [
        plainBand([stepUpTo("15.999", "oz", [460, 520]), stepUpTo("1", "lb", [610, 740])], {
          walls: {
            longest: measure("48", "in"),
            lengthAndGirth: measure("108", "in"),
            sides: null,
            weight: measure("70", "lb"),
          },
          beyond: { kind: "perFurther", each: measure("1", "lb"), prices: [85, 120].map(minorUnits) },
        }),
      ],
      roundUpTo: measure("1", "oz"),
      dimensional: {
        divisor: exact("139"),
        lengthUnit: "in",
        massUnit: "lb",
        floor: exact("1728"),
        sides: { kind: "up", to: exact("1") },
        result: { kind: "none" },
        shapeFactor: null,
        atMost: null,
        zones: null,
      },
      fees: [
        {
          name: "Long",
          validFrom: day("2026-10-04"),
          validTo: null,
          when: { kind: "side", which: "second", over: measure("22", "in"), upTo: null },
          groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(450) }] }],
        },
      ],
    });
    const sourced = { card, source: "invented", readOn: day("2026-07-03") };
    const named = withZoneNames(sourced, zones);
    expect(fitsForm(named.card)).toBe(true);
    const { groups, fields } = rateCardFields(named, ["Near", "Far"], day("2026-11-25"));
    const filled = [...groups.flatMap((group) => group.fields), ...fields].flatMap(({ name, value }) =>
      value === undefined ? [] : [[name, value]],
    );
    expect(form.parse(Object.fromEntries(filled))).toEqual(sourced);
    expect(withZoneIds(named, zones)).toEqual(sourced);
  });

  it("with several bands takes rows", () => {
    const band = plainBand([stepUpTo("1", "lb", [610])], { name: "small" });
    expect(fitsForm(plainCard({ bands: [band, { ...band, name: "large", walls: NO_WALLS }] }))).toBe(false);
  });
});
