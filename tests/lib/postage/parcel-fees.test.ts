import { describe, expect, it } from "vitest";
import { nanogramsOf } from "#lib/postage/exact-mass";
import { type FeeQuestion, parcelFees } from "#lib/postage/parcel-fees";
import type { RateFee } from "#lib/postage/rate-fee";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { exact, sized, typed } from "./rate-card-fixture";

const flat = (minor: number): RateFee["groups"] => [
  { zones: null, rows: [{ upTo: null, minor: minorUnits(minor) }] },
];
const fee = (name: string, change: Partial<RateFee>): RateFee => ({
  name,
  validFrom: null,
  validTo: null,
  when: { kind: "always" },
  groups: flat(100),
  ...change,
});
const question: FeeQuestion = {
  zone: "near",
  stepNg: nanogramsOf(typed("4", "lb")),
  size: sized("60 x 40 x 20 cm"),
  shipDay: day("2026-11-25"),
};
const charged = (fees: readonly RateFee[], change: Partial<FeeQuestion> = {}) =>
  parcelFees(fees, { ...question, ...change }).map(({ name, minor }) => `${name} ${minor}`);

describe("fees on a parcel", () => {
  it("are charged from their first to their last day", () => {
    const season = fee("season", { validFrom: day("2026-10-04"), validTo: day("2027-01-17") });
    const on = (date: string) => charged([season], { shipDay: day(date) }).length;
    expect(["2026-10-03", "2026-10-04", "2027-01-17", "2027-01-18"].map(on)).toEqual([0, 1, 1, 0]);
  });

  it("fall on sides over a length and not over the next one", () => {
    const long = fee("long", {
      when: { kind: "side", which: "longest", over: typed("60", "cm"), upTo: typed("80", "cm") },
    });
    const at = (sizes: string) => charged([long], { size: sized(sizes) }).length;
    expect(["60 x 40 x 20 cm", "60.1 x 1 x 1 cm", "1 x 80 x 1 cm", "80.1 x 1 x 1 cm"].map(at)).toEqual([
      0, 1, 1, 0,
    ]);
  });

  it("look at the second longest side, and at the volume of the box round it", () => {
    const wide = fee("wide", {
      when: { kind: "side", which: "second", over: typed("40", "cm"), upTo: null },
    });
    const bulky = fee("bulky", { when: { kind: "volume", over: exact("48000"), unit: "cm" } });
    expect(charged([wide, bulky])).toEqual([]);
    expect(charged([wide, bulky], { size: sized("60 x 20 x 40.1 cm") })).toEqual(["wide 100", "bulky 100"]);
  });

  it("for size are left out where the size is not known", () => {
    const wide = fee("wide", { when: { kind: "side", which: "second", over: typed("1", "cm"), upTo: null } });
    expect(charged([wide, fee("fuel", {})], { size: null })).toEqual(["fuel 100"]);
  });

  it("go by zone group and by the step: at the limit of a row it still counts", () => {
    const groups = [
      {
        zones: ["near"],
        rows: [
          { upTo: typed("4", "lb"), minor: minorUnits(60) },
          { upTo: null, minor: minorUnits(90) },
        ],
      },
      { zones: ["far"], rows: [{ upTo: typed("4", "lb"), minor: minorUnits(145) }] },
    ];
    const peak = fee("peak", { groups });
    expect(charged([peak])).toEqual(["peak 60"]);
    const five = nanogramsOf(typed("5", "lb"));
    expect(charged([peak], { stepNg: five })).toEqual(["peak 90"]);
    expect(charged([peak], { zone: "far" })).toEqual(["peak 145"]);
    expect(charged([peak], { zone: "far", stepNg: five })).toEqual([]);
    expect(charged([peak], { zone: "abroad" })).toEqual([]);
  });
});
