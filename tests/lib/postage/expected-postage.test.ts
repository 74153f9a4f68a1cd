import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { massAsStored } from "#lib/postage/exact-mass";
import { type ExpectedQuestion, expectedPostage } from "#lib/postage/expected-postage";
import { ratedParcel } from "#lib/postage/rated-parcel";
import { stepWords } from "#lib/postage/step-words";
import type { WeightSpread } from "#lib/postage/weight-spread";
import { day } from "#lib/units/day";
import { milligrams } from "#lib/units/mass";
import { minorUnits } from "#lib/units/money";
import { exact, plainBand, plainCard, sized, stepUpTo, typed } from "./rate-card-fixture";

const basis = { parcels: 14, isGuess: false };
const beyond = {
  kind: "perFurther" as const,
  each: typed("1", "kg"),
  prices: [100, 200].map(minorUnits),
};
const card = plainCard({
  zones: ["near", "far"],
  bands: [plainBand([stepUpTo("1", "kg", [400, 500]), stepUpTo("2", "kg", [650, 900])], { beyond })],
});
const errors = (...errorsMg: number[]): WeightSpread => ({
  basis,
  kind: "errors",
  predictedMg: 900_000,
  errorsMg,
});
const question: ExpectedQuestion = {
  card,
  zones: [
    { zone: "near", share: 3 },
    { zone: "far", share: 1 },
  ],
  size: null,
  shipDay: day("2026-11-25"),
  spread: errors(0, 0, 200_000, 1_200_000),
};
const expected = (change: Partial<ExpectedQuestion>) => {
  const answer = expectedPostage({ ...question, ...change });
  if (answer.kind !== "expected") throw new RangeError(`expected requires a card, got ${answer.kind}`);
  return answer;
};

describe("expected postage", () => {
  it("is each step's price times its chance, over the shares of the zones", () => {
    const { minor, zones, notCarried } = expected({});
    // By hand: near (400 + 400 + 650 + 750) / 4, far (500 + 500 + 900 + 1100) / 4, mixed 3 to 1.
    expect(zones).toEqual([
      { zone: "near", share: 0.75, minor: 550, notCarried: 0 },
      { zone: "far", share: 0.25, minor: 750, notCarried: 0 },
    ]);
    expect([minor, notCarried]).toEqual([600, 0]);
  });

  it("comes with the odds under each step and its mean price", () => {
    const odds = expected({}).steps.map(({ step, chance, upTo, minor }) => [
      stepWords(step),
      chance,
      upTo,
      minor,
    ]);
    expect(odds).toEqual([
      ["up to 1 kg", 0.5, 0.5, 425],
      ["up to 2 kg", 0.25, 0.75, 712.5],
      ["up to 3 kg", 0.25, 1, 837.5],
      ["up to 4 kg", 0, 1, 962.5],
    ]);
  });

  it("passes on where the weight comes from", () => {
    const guess = { parcels: 0, isGuess: true };
    expect(expected({ spread: { ...errors(0), basis: guess } }).basis).toEqual(guess);
  });

  it("is that of what is carried, and tells the chance of what is not", () => {
    const short = plainCard();
    const zones = [{ zone: "home", share: 1 }];
    const answer = expected({ card: short, zones, spread: errors(0, 0, 0, 9_000_000) });
    expect([answer.minor, answer.notCarried]).toEqual([400, 0.25]);
    const none = expected({ card: short, zones, spread: errors(9_000_000) });
    expect([none.minor, none.notCarried, none.zones[0]?.minor]).toEqual([null, 1, null]);
  });

  it("gives a zone without a share no weight", () => {
    const zones = [
      { zone: "near", share: 1 },
      { zone: "far", share: 0 },
    ];
    expect(expected({ zones }).minor).toBe(550);
  });

  it("tells a day without a card and a zone that is not on it, and refuses shares that are none", () => {
    expect(expectedPostage({ ...question, shipDay: day("2025-01-01") })).toEqual({ kind: "noCard" });
    expect(expectedPostage({ ...question, zones: [{ zone: "moon", share: 1 }] })).toEqual({
      kind: "noZone",
      zone: "moon",
    });
    expect(() => expected({ zones: [{ zone: "near", share: 0 }] })).toThrow("shares from 0");
    expect(() => expected({ zones: [] })).toThrow(RangeError);
    expect(() =>
      expected({
        zones: [
          { zone: "near", share: 2 },
          { zone: "far", share: -1 },
        ],
      }),
    ).toThrow(RangeError);
  });

  it("of a sure weight is its price", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8_000_000 }), (mg) => {
        const spread: WeightSpread = { basis, kind: "normal", meanMg: mg, deviationMg: 0 };
        const weight = massAsStored(milligrams(mg), { measures: "metric" });
        const rating = ratedParcel({ card, zone: "far", weight, size: null, shipDay: question.shipDay });
        const { minor } = expected({ spread, zones: [{ zone: "far", share: 1 }] });
        expect(minor).toBe(rating.kind === "priced" ? rating.minor : null);
      }),
    );
  });

  it("never falls when every parcel weighs more, on a card that rises", () => {
    const prices = fc.array(fc.nat(500), { minLength: 6, maxLength: 6 });
    const errorList = fc.array(fc.integer({ min: -300_000, max: 2_000_000 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(
        prices,
        errorList,
        fc.nat(3_000_000),
        fc.nat(400_000),
        (rises, list, heavier, deviationMg) => {
          let price = 100;
          const steps = rises.map((rise, at) => {
            price += rise;
            return stepUpTo(String(at * 300 + 250), "g", [price, price * 2]);
          });
          const rising = plainCard({ zones: ["near", "far"], bands: [plainBand(steps, { beyond })] });
          const postage = (spread: WeightSpread) => expected({ card: rising, spread }).minor ?? Number.NaN;
          const moved = list.map((each) => each + heavier);
          expect(postage(errors(...list))).toBeLessThanOrEqual(postage(errors(...moved)) + 1e-9);
          const normal = { basis, kind: "normal", meanMg: 900_000, deviationMg } as const;
          const shifted = postage({ ...normal, meanMg: 900_000 + heavier });
          expect(postage(normal)).toBeLessThanOrEqual(shifted + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("never falls from zone to zone on a card that rises with them, whatever the weight and the size", () => {
    const rule = {
      divisor: exact("5000"),
      lengthUnit: "cm",
      massUnit: "kg",
      floor: null,
      sides: { kind: "up", to: exact("1") },
      result: { kind: "up", to: exact("0.5") },
      shapeFactor: null,
      atMost: null,
      zones: null,
    } as const;
    const rises = fc.array(fc.nat(300), { minLength: 4, maxLength: 4 });
    const steps = fc.array(rises, { minLength: 6, maxLength: 6 });
    const sizes = fc.constantFrom(null, "20 x 20 x 10 cm", "40 x 20 x 15 cm");
    fc.assert(
      fc.property(steps, sizes, fc.nat(3_000_000), fc.nat(500_000), (rows, text, meanMg, deviationMg) => {
        const zones = ["a", "b", "c", "d"];
        const prices = rows.map((row) =>
          row.map((_, at) => 300 + row.slice(0, at + 1).reduce((sum, rise) => sum + rise, 0)),
        );
        const rising = plainCard({
          zones,
          bands: [plainBand(prices.map((row, at) => stepUpTo(String(at + 1), "kg", row)))],
          dimensional: rule,
        });
        const spread = { basis, kind: "normal", meanMg, deviationMg } as const;
        const size = text === null ? null : sized(text);
        const answer = expected({
          card: rising,
          size,
          spread,
          zones: zones.map((zone) => ({ zone, share: 1 })),
        });
        const minors = answer.zones.map(({ minor }) => minor ?? Number.NaN);
        expect(minors.every((minor, at) => at === 0 || minor >= (minors[at - 1] ?? 0) - 1e-9)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
