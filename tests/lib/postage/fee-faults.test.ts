import { describe, expect, it } from "vitest";
import { feeFaults } from "#lib/postage/fee-faults";
import type { FeeGroup, RateFee } from "#lib/postage/rate-fee";
import { ratio } from "#lib/postage/ratio";
import type { TypedMass } from "#lib/postage/typed-measure";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { typed } from "./rate-card-fixture";

const row = (upTo: TypedMass | null, minor = 40) => ({
  upTo,
  minor: minor as FeeGroup["rows"][number]["minor"],
});
const sound: RateFee = {
  name: "season",
  validFrom: day("2026-10-04"),
  validTo: day("2027-01-17"),
  when: { kind: "side", which: "longest", over: typed("22", "in"), upTo: typed("76", "cm") },
  groups: [
    { zones: ["near"], rows: [row(typed("3", "lb")), row(typed("10", "lb")), row(null)] },
    { zones: ["far"], rows: [{ upTo: null, minor: minorUnits(0) }] },
  ],
};
const told = (change: Partial<RateFee>) =>
  feeFaults({ zones: ["near", "far"] }, { ...sound, ...change }).map(({ message }) => message);
const rows = (...all: readonly ReturnType<typeof row>[]) => told({ groups: [{ zones: null, rows: all }] });

describe("faults of a fee", () => {
  it("are none in a sound one", () => {
    expect(told({})).toEqual([]);
    expect(told({ when: { kind: "always" }, validTo: null })).toEqual([]);
  });

  it("name days out of order", () => {
    expect(told({ validTo: day("2026-10-03") })).toEqual([
      "Fee season: its last day 2026-10-03 is before its first, 2026-10-04. Mend one of them.",
    ]);
  });

  it("name sizes that no parcel can have, in any units", () => {
    const over = typed("30", "in");
    expect(told({ when: { kind: "side", which: "second", over, upTo: typed("76.2", "cm") } })).toEqual([
      "Fee season: it falls on sides over 30 in up to 76.2 cm, which is none. Mend one of them.",
    ]);
    expect(told({ when: { kind: "volume", over: ratio(-1n), unit: "in" } })).toEqual([
      "Fee season: the size over which it falls is below zero. Type it from zero.",
    ]);
  });

  it("name zones that are not on the card, and zones in two groups", () => {
    const groups = [
      { zones: ["near", "moon"], rows: [row(null)] },
      { zones: ["near"], rows: [row(null)] },
    ];
    expect(told({ groups })).toEqual([
      "Fee season, zone moon: the card has no such zone. Add it or mend its name.",
      "Fee season, zone near: it stands in two groups. Take it out of one.",
    ]);
  });

  it("name fees and groups without an amount", () => {
    expect(told({ groups: [] })).toEqual(["Fee season: it has no amount. Add one or take the fee away."]);
    expect(told({ groups: [{ zones: ["far"], rows: [] }] })).toEqual([
      "Fee season, zones far: it has no amount. Add one or take the group away.",
    ]);
  });

  it("name amounts below zero and rows out of order", () => {
    expect(rows(row(typed("3", "lb"), -1), row(typed("48", "oz")))).toEqual([
      "Fee season, up to 3 lb: a fee cannot be below zero. Type what the list says.",
      "Fee season, up to 3 lb: the next row is not heavier. Mend it or sort the rows.",
    ]);
    expect(rows(row(null), row(typed("3", "lb")))).toEqual([
      "Fee season, any weight: rows after it are never reached. Put it last.",
    ]);
  });
});
