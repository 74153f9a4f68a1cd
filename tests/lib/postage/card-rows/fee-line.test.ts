import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { feeLine, feeLineRows } from "#lib/postage/card-rows/fee-line";
import { feeFromRows } from "#lib/postage/card-rows/fee-rows";
import type { RateFee } from "#lib/postage/rate-fee";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { exact, typed } from "../rate-card-fixture";
import { soundCards } from "./sound-card";

const long: RateFee = {
  name: "Long: parcels; all",
  validFrom: day("2026-10-04"),
  validTo: null,
  when: { kind: "side", which: "longest", over: typed("22", "in"), upTo: typed("30", "in") },
  groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(450) }] }],
};

function readBack(line: string): RateFee | string {
  const rows = feeLineRows(line, 3, 2);
  if ("problem" in rows) return rows.problem;
  const refused: string[] = [];
  const refuse = (at: number, words: string): null => {
    refused.push(`${at}: ${words}`);
    return null;
  };
  const reader = { measures: "imperial", minorDigits: 2, zones: ["Near", "Far"], refuse } as const;
  const fee = feeFromRows(rows, [true, true], reader);
  return refused.length > 0 ? refused.join() : fee;
}

describe("a fee on one line", () => {
  it("is read back as the same fee", () => {
    expect(feeLine(long, 2)).toBe(
      "Long: parcels; all: 4.50; from 2026-10-04; longest side over 22 in; but not over 30 in",
    );
    expect(readBack(feeLine(long, 2) ?? "")).toEqual(long);
    const large: RateFee = {
      ...long,
      name: "Large",
      when: { kind: "volume", over: exact("3456"), unit: "in" },
    };
    expect(readBack(feeLine(large, 2) ?? "")).toEqual(large);
  });

  it("is read back whatever simple fee a sound card has", () => {
    fc.assert(
      fc.property(soundCards, ({ card }) => {
        for (const fee of card.fees) {
          const line = feeLine({ ...fee, groups: long.groups }, 2);
          expect(readBack(line ?? "")).toEqual({ ...fee, groups: long.groups });
        }
      }),
      { numRuns: 60 },
    );
  });

  it("cannot say a fee that differs by zone or weight", () => {
    expect(
      feeLine({ ...long, groups: [{ zones: ["Near"], rows: long.groups[0]?.rows ?? [] }] }, 2),
    ).toBeNull();
    const rows = [{ upTo: typed("3", "lb"), minor: minorUnits(40) }];
    expect(feeLine({ ...long, groups: [{ zones: null, rows }] }, 2)).toBeNull();
  });

  it("says what can't be read of it", () => {
    expect(readBack("4.50 for long ones")).toContain("is no fee. Write its name, a colon and the amount");
    expect(readBack("Long: 4.50; when heavy")).toContain("“when heavy” says nothing of a fee.");
    expect(readBack("Long: dear")).toContain("“dear” for Near is no amount.");
    expect(readBack("Long: 4.50; longest side over 22")).toContain(
      "3: “22” for longest side over can't be read.",
    );
  });
});
