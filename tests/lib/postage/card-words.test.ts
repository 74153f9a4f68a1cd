import { describe, expect, it } from "vitest";
import { feeWords, roundingUpWords, sizeRuleWords, wallWords } from "#lib/postage/card-words";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { exact, plainBand, plainCard, typed } from "./rate-card-fixture";

describe("a card in words", () => {
  it("says what a band takes", () => {
    expect(wallWords(plainBand([]))).toBeNull();
    const sides = [typed("45", "cm"), typed("35", "cm"), typed("16", "cm")] as const;
    expect(wallWords({ walls: { ...NO_WALLS, sides, weight: typed("2", "kg") } })).toBe(
      "up to 45 × 35 × 16 cm, up to 2 kg",
    );
    const walls = { ...NO_WALLS, longest: typed("22", "in"), lengthAndGirth: typed("108", "in") };
    expect(wallWords({ walls })).toBe("longest side up to 22 in, length and girth up to 108 in");
  });

  it("says how size counts", () => {
    expect(sizeRuleWords(null)).toBe("Size adds no weight.");
    const one = exact("1");
    const rule = {
      divisor: exact("139"),
      lengthUnit: "in",
      massUnit: "lb",
      floor: exact("1728"),
      sides: { kind: "up", to: one },
      result: { kind: "up", to: one },
      shapeFactor: exact("0.785"),
      atMost: exact("70"),
      zones: ["Far"],
    } as const;
    expect(sizeRuleWords(rule)).toBe(
      "Over 1,728 in³ size counts to Far: each side up to a whole in, volume ÷ 139 in³ for each lb, that weight up to a whole lb, what is no box × 0.785, at most 70 lb.",
    );
  });

  it("says fees with their condition, zones, weights and days", () => {
    const rows = [
      { upTo: typed("3", "lb"), minor: minorUnits(40) },
      { upTo: null, minor: minorUnits(95) },
    ];
    const season = {
      name: "Peak season",
      validFrom: day("2026-10-04"),
      validTo: day("2027-01-17"),
      when: { kind: "always" } as const,
      groups: [{ zones: ["Near"], rows }],
    };
    expect(feeWords(season, "USD")).toBe(
      "Peak season: Near up to 3 lb $0.40, heavier $0.95 from 4 Oct 2026 to 17 Jan 2027.",
    );
    const long = {
      name: "Long",
      validFrom: null,
      validTo: null,
      when: { kind: "side", which: "longest", over: typed("22", "in"), upTo: typed("30", "in") } as const,
      groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(400) }] }],
    };
    expect(feeWords(long, "USD")).toBe("Long: $4.00, where the longest side is over 22 in up to 30 in.");
    expect(feeWords({ ...long, when: { kind: "volume", over: exact("3456"), unit: "in" } }, "USD")).toBe(
      "Long: $4.00, for more than 3,456 in³.",
    );
  });

  it("says how weights are rounded", () => {
    expect(roundingUpWords(plainCard())).toBeNull();
    expect(roundingUpWords(plainCard({ roundUpTo: typed("1", "lb") }))).toBe(
      "Weights go up to whole multiples of 1 lb.",
    );
  });
});
