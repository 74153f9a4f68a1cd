import { describe, expect, it } from "vitest";
import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import type { RateCard } from "#lib/postage/rate-card";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import { ratio } from "#lib/postage/ratio";
import { day } from "#lib/units/day";
import { exact, plainBand, plainCard, stepUpTo, typed } from "./rate-card-fixture";

const rule: DimensionalRule = {
  divisor: exact("5000"),
  lengthUnit: "cm",
  massUnit: "kg",
  floor: null,
  sides: { kind: "up", to: ratio(1n) },
  result: { kind: "none" },
  shapeFactor: null,
  atMost: null,
  zones: null,
};
const told = (change: Partial<RateCard>) => rateCardFaults(plainCard(change)).map(({ message }) => message);
const ruled = (change: Partial<DimensionalRule>) => told({ dimensional: { ...rule, ...change } });

describe("faults of a rate card", () => {
  it("are none in a sound one", () => {
    expect(told({})).toEqual([]);
    expect(ruled({ zones: ["home"], floor: exact("0"), shapeFactor: exact("0.785") })).toEqual([]);
  });

  it("name what is missing at its head", () => {
    expect(told({ service: " ", currency: "euro" })).toEqual([
      "The service has no name. Name it as you call it.",
      'The currency "euro" is no code of three capitals. Type one such as EUR.',
    ]);
    expect(told({ service: "x".repeat(200) })).toEqual([]);
    expect(told({ service: "x".repeat(201) })).toEqual([
      "The name of the service has 201 letters; at most 200 can be shown. Shorten it.",
    ]);
  });

  it("name days out of order; a card of one day is sound", () => {
    expect(told({ validTo: day("2025-12-31") })).toEqual([
      "The last day 2025-12-31 is before the first, 2026-01-01. Mend one of them.",
    ]);
    expect(told({ validTo: day("2026-01-01") })).toEqual([]);
  });

  it("name zones that are missing, unnamed or there twice", () => {
    const bands = (count: number) => [
      plainBand([
        stepUpTo(
          "1",
          "kg",
          Array.from({ length: count }, () => 400),
        ),
      ]),
    ];
    expect(told({ zones: [], bands: bands(0) })).toEqual([
      "The card has no zone. Add one; a single price is one zone.",
    ]);
    expect(told({ zones: ["1", "", "1"], bands: bands(3) })).toEqual([
      "Zone 2 has no name. Name it or take it away.",
      "Zone 1 stands there twice. Rename one or take it away.",
    ]);
  });

  it("name bands that cannot be told apart, and a card without any", () => {
    const steps = [stepUpTo("1", "kg", [400])];
    const named = (name: string) => plainBand(steps, { name });
    expect(told({ bands: [] })).toEqual(["The card has no prices. Add a weight step."]);
    expect(told({ bands: [named("Small"), named(""), named("Small")] })).toEqual([
      "Band 2 has no name. Name it, so that the bands can be told apart.",
      "Two bands are called Small. Rename one.",
    ]);
  });

  it("name what a rule by size cannot be worked out with", () => {
    expect(ruled({ divisor: exact("0"), sides: { kind: "up", to: exact("0") }, zones: ["moon"] })).toEqual([
      "Weight by size, divisor: it must be above zero. Type what the carrier says.",
      "Weight by size, rounding of sides: it must be above zero. Type what the carrier says.",
      "Weight by size, zone moon: the card has no such zone. Add it or mend its name.",
    ]);
    expect(ruled({ floor: ratio(-1n) })).toEqual([
      "Weight by size, volume over which it counts: it cannot be below zero. Leave it empty for none.",
    ]);
  });

  it("name a rounding to nothing", () => {
    expect(told({ roundUpTo: typed("0", "kg") })).toEqual([
      "Weights cannot be rounded up to 0 kg. Type a weight above zero or leave it empty.",
    ]);
  });

  it("hold those of bands and fees", () => {
    const fees = [
      { name: "fuel", validFrom: null, validTo: null, when: { kind: "always" as const }, groups: [] },
    ];
    expect(told({ bands: [plainBand([])], fees })).toEqual([
      "The card has no weight step. Add at least one.",
      "Fee fuel: it has no amount. Add one or take the fee away.",
    ]);
  });
});
