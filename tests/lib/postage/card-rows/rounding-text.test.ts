import { describe, expect, it } from "vitest";
import { roundingFromText, roundingText } from "#lib/postage/card-rows/rounding-text";
import type { Rounding } from "#lib/postage/ratio-rounding";
import { exact } from "../rate-card-fixture";

describe("a rounding in rows", () => {
  it("is read back from its own text", () => {
    const all: Rounding[] = [
      { kind: "none" },
      { kind: "up", to: exact("1") },
      { kind: "nearest", to: exact("1/2") },
      { kind: "down", to: exact("0.25") },
    ];
    expect(all.map((each) => roundingText(each, "in"))).toEqual([
      "as it is",
      "up to 1 in",
      "nearest 1/2 in",
      "down to 0.25 in",
    ]);
    expect(all.map((each) => roundingFromText(roundingText(each, "in"), "in", "imperial"))).toEqual(all);
  });

  it("must be in the unit of the rule, and above zero", () => {
    expect(roundingFromText("To the nearest 1 in", "in", "imperial")).toEqual({
      kind: "nearest",
      to: exact("1"),
    });
    expect(roundingFromText("up to 1 cm", "in", "imperial")).toBeNull();
    expect(roundingFromText("up to 0 in", "in", "imperial")).toBeNull();
    expect(roundingFromText("whole inches", "in", "imperial")).toBeNull();
  });
});
