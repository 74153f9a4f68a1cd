import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { massAsStored } from "#lib/postage/exact-mass";
import { priceLadder, priceLadders, type Rung } from "#lib/postage/price-ladder";
import type { RateCard } from "#lib/postage/rate-card";
import { type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { ratio, ratioSum } from "#lib/postage/ratio";
import { NO_WALLS } from "#lib/postage/size-walls";
import { weightLimits } from "#lib/postage/weight-limits";
import { day } from "#lib/units/day";
import { milligrams } from "#lib/units/mass";
import { minorUnits } from "#lib/units/money";
import type { Ratio } from "#lib/units/number-text";
import { soundCards } from "./card-rows/sound-card";
import { exact, plainBand, plainCard, sized, stepUpTo, typed } from "./rate-card-fixture";

const shipDay = day("2026-11-25");
const rule = {
  divisor: exact("5000"),
  lengthUnit: "cm",
  massUnit: "kg",
  floor: null,
  sides: { kind: "none" },
  result: { kind: "none" },
  shapeFactor: null,
  atMost: null,
  zones: null,
} as const;
const ladderOf = (card: RateCard, sizes: string | null = null, untilMg = 10_000_000) =>
  priceLadder({ card, zone: "home", size: sizes === null ? null : sized(sizes), shipDay }, untilMg);
const told = (rungs: readonly Rung[]) =>
  rungs.map(({ upToMg, rating }) => [upToMg, rating.kind === "priced" ? rating.minor : rating.kind]);

const beyond = { kind: "perFurther" as const, each: typed("500", "g"), prices: [minorUnits(120)] };
const mixed = plainCard({
  bands: [
    plainBand([stepUpTo("4", "oz", [300]), stepUpTo("1", "kg", [400])], {
      name: "small",
      walls: { ...NO_WALLS, longest: typed("30", "cm"), weight: typed("900", "g") },
    }),
    plainBand([stepUpTo("2", "kg", [700])], { name: "large", beyond }),
  ],
  dimensional: rule,
  roundUpTo: typed("50", "g"),
});

/** Size counts far away only; near by there is a fee for heavy ones. */
const twoZones = plainCard({
  zones: ["near", "far"],
  bands: [plainBand([stepUpTo("1", "kg", [400, 500]), stepUpTo("20", "kg", [700, 900])])],
  dimensional: { ...rule, zones: ["far"] },
  fees: [
    {
      name: "heavy",
      validFrom: null,
      validTo: null,
      when: { kind: "always" },
      groups: [
        {
          zones: ["near"],
          rows: [
            { upTo: typed("2", "kg"), minor: minorUnits(0) },
            { upTo: null, minor: minorUnits(90) },
          ],
        },
      ],
    },
  ],
});

/** What a rating says of all weights of its rung. */
function answerOf(rating: Rating) {
  if (rating.kind === "priced") return { minor: rating.minor, step: rating.step, fees: rating.fees };
  return rating.kind === "noPrice" ? rating : { kind: rating.kind };
}

function expectSameAsRated(question: Omit<ParcelQuestion, "weight">, untilMg: number): void {
  const rated = (ng: Ratio) => ratedParcel({ ...question, weight: { ng, text: "" } });
  const { ng: limits, mg } = weightLimits(question.card, untilMg);
  const rungs = priceLadder(question, untilMg);
  for (const [place, rung] of rungs.entries()) {
    const limit = limits[mg.indexOf(rung.upToMg)] ?? ratio(-1n);
    expect(rung.rating).toEqual(rated(limit));
    const under = ratioSum(limit, ratio(-1n, 1_000_000n));
    if (under.numerator >= 0n) expect(answerOf(rung.rating)).toEqual(answerOf(rated(under)));
    // Further units are told up to `untilMg` only.
    const above = rung.upToMg < untilMg ? rungs[place + 1] : undefined;
    const over = rated(ratioSum(limit, ratio(1n, 1_000_000n)));
    expect(answerOf(above?.rating ?? over)).toEqual(answerOf(over));
  }
}

describe("the price ladder", () => {
  it("has a rung for each step, and one for what is too heavy", () => {
    expect(told(ladderOf(plainCard()))).toEqual([
      [1_000_000, 400],
      [2_000_000, 650],
      [5_000_000, 1100],
      [Number.POSITIVE_INFINITY, "tooHeavy"],
    ]);
  });

  it("leaves out steps that the size does not let it pay", () => {
    expect(told(ladderOf(plainCard({ dimensional: rule }), "20 x 20 x 15 cm"))[0]).toEqual([2_000_000, 650]);
  });

  it("goes on in further units until the weight is reached", () => {
    const card = plainCard({ bands: [plainBand([stepUpTo("1", "kg", [400])], { beyond })] });
    expect(told(ladderOf(card, null, 2_000_000))).toEqual([
      [1_000_000, 400],
      [1_500_000, 520],
      [2_000_000, 640],
      [Number.POSITIVE_INFINITY, 760],
    ]);
    const tiny = { ...beyond, each: typed("0.001", "g") };
    const endless = plainCard({ bands: [plainBand([stepUpTo("1", "kg", [400])], { beyond: tiny })] });
    expect(() => ladderOf(endless)).toThrow("up to 100000 rungs");
  });

  it("is one rung where nothing is carried", () => {
    const walls = { ...NO_WALLS, longest: typed("10", "cm") };
    const card = plainCard({ bands: [plainBand([stepUpTo("1", "kg", [400])], { walls })] });
    expect(told(ladderOf(card, "20 x 5 x 5 cm"))).toEqual([[Number.POSITIVE_INFINITY, "tooLarge"]]);
  });

  it("tells at every weight what rating the parcel tells, over bands, walls, rounding, size and further units", () => {
    const sizes = fc.constantFrom(
      null,
      "30 x 10 x 10 cm",
      "31 x 10 x 10 cm",
      "30 x 20 x 10 cm",
      "40 x 30 x 25 cm",
    );
    const weights = fc.oneof(
      fc.integer({ min: 0, max: 9_000_000 }),
      fc.constantFrom(
        100_000,
        113_398,
        113_399,
        150_000,
        899_999,
        900_000,
        900_001,
        1_000_000,
        2_000_000,
        2_000_001,
      ),
    );
    fc.assert(
      fc.property(sizes, weights, (text, mg) => {
        const size = text === null ? null : sized(text);
        const weight = massAsStored(milligrams(mg), { measures: "metric" });
        const rating = ratedParcel({ card: mixed, zone: "home", size, shipDay, weight });
        const rung = ladderOf(mixed, text).find(({ upToMg }) => mg <= upToMg + 0.5);
        expect(told(rung === undefined ? [] : [rung])[0]?.[1]).toBe(
          rating.kind === "priced" ? rating.minor : rating.kind,
        );
      }),
      { numRuns: 300 },
    );
  });

  it("has, on any sound card, rungs that are the parcel's rating at, just under and just over each limit", () => {
    const sizes = fc.constantFrom(
      null,
      "12 x 9 x 8 in",
      "24.5 x 14 x 6 in",
      "40 x 20 x 20 in",
      "2 x 1 x 1 in",
    );
    fc.assert(
      fc.property(soundCards, sizes, fc.nat(3_000_000), fc.nat(3), ({ card }, text, untilMg, at) => {
        const zone = card.zones[at % card.zones.length] ?? "";
        const question = { card, zone, size: text === null ? null : sized(text), shipDay: card.validFrom };
        expectSameAsRated(question, untilMg);
      }),
      { numRuns: 100 },
    );
  });

  it("is worked out for several zones as for each alone", () => {
    const question = { card: twoZones, size: sized("24 x 14 x 6 in"), shipDay };
    expect(priceLadders(question, twoZones.zones, 9_000_000)).toEqual(
      twoZones.zones.map((zone) => priceLadder({ ...question, zone }, 9_000_000)),
    );
    expect(told(priceLadders(question, ["moon"], 1_000_000)[0] ?? [])).toEqual([
      [Number.POSITIVE_INFINITY, "noZone"],
    ]);
    const early = { ...question, shipDay: day("2025-12-31") };
    expect(told(priceLadders(early, ["near"], 1_000_000)[0] ?? [])).toEqual([
      [Number.POSITIVE_INFINITY, "noCard"],
    ]);
  });
});
