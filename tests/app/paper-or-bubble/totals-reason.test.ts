import { describe, expect, it } from "vitest";
import { totalsReason } from "#app/paper-or-bubble/totals-reason.ts";
import type { KindsTotal } from "#lib/cushioning/parcel-kind";
import { DOLLARS } from "../cartons/small-shelf";

const total = (materialsMinor: number, postageMinor: number, rest: number): KindsTotal => ({
  ...{ materialsMinor, postageMinor, totalMinor: materialsMinor + postageMinor + rest, otherwise: 0 },
});
const said = (paper: KindsTotal, bubble: KindsTotal) =>
  totalsReason(
    {
      allIn: new Map([
        ["paper", paper],
        ["bubble", bubble],
      ]),
    },
    DOLLARS,
  );

describe("why all on one style is dearer than all on the other", () => {
  it("is told part by part", () => {
    expect(said(total(1_000, 5_000, 0), total(1_800, 4_500, 0))).toBe(
      "All on bubble, the materials cost $8.00 more than on paper, and the postage $5.00 less.",
    );
  });

  it("names time and breakage where they differ, so that the parts add up", () => {
    // 8.00 - 5.00 - 6.00 = 3.00 less in all
    expect(said(total(1_000, 5_000, 900), total(1_800, 4_500, 300))).toBe(
      "All on bubble, the materials cost $8.00 more than on paper, the postage $5.00 less, and time and breakage $6.00 less.",
    );
  });

  it("says that a part is the same where it is, to the coin", () => {
    expect(said(total(1_000, 0, 0), total(1_000.2, 0, 0))).toBe(
      "All on bubble, the materials cost the same as on paper, and the postage the same.",
    );
  });

  it("is not told without both", () => {
    expect(totalsReason({ allIn: new Map([["paper", total(1, 2, 0)]]) }, DOLLARS)).toBe("");
  });
});
