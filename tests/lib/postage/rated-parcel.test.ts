import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import { massAsStored } from "#lib/postage/exact-mass";
import type { RateBand } from "#lib/postage/rate-card";
import { billableQuestion, type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { ratio } from "#lib/postage/ratio";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { milligrams } from "#lib/units/mass";
import { minorUnits } from "#lib/units/money";
import { exact, plainBand, plainCard, sized, stepUpTo, typed, weighed } from "./rate-card-fixture";

const question: ParcelQuestion = {
  card: plainCard(),
  zone: "home",
  weight: weighed("830 g"),
  size: null,
  shipDay: day("2026-11-25"),
};
const rated = (change: Partial<ParcelQuestion>): Rating => ratedParcel({ ...question, ...change });
const minorOf = (rating: Rating) => (rating.kind === "priced" ? rating.minor : rating.kind);

// Example of one national post, date unknown, from its page; the prices are invented.
const BANDS = [
  plainBand([stepUpTo("2", "kg", [450])], {
    name: "Small parcel",
    walls: { ...NO_WALLS, sides: [typed("45", "cm"), typed("35", "cm"), typed("16", "cm")] },
  }),
  plainBand([stepUpTo("5", "kg", [900]), stepUpTo("20", "kg", [1500])], {
    name: "Medium parcel",
    walls: { ...NO_WALLS, sides: [typed("61", "cm"), typed("46", "cm"), typed("46", "cm")] },
  }),
];
const banded = plainCard({ bands: BANDS });

const rule: DimensionalRule = {
  divisor: exact("5000"),
  lengthUnit: "cm",
  massUnit: "kg",
  floor: null,
  sides: { kind: "none" },
  result: { kind: "none" },
  shapeFactor: null,
  atMost: null,
  zones: null,
};

describe("rating a parcel", () => {
  it("takes the first step that the weight is not over", () => {
    const at = (text: string) => minorOf(rated({ weight: weighed(text) }));
    expect(["0.2 kg", "1 kg", "1.001 kg", "2 kg", "5 kg", "5.001 kg"].map(at)).toEqual([
      400,
      400,
      650,
      650,
      1100,
      "tooHeavy",
    ]);
  });

  it("keeps 15.999 oz and 16 oz apart, and 5 oz within 5 oz", () => {
    const steps = [stepUpTo("5", "oz", [1]), stepUpTo("15.999", "oz", [2]), stepUpTo("1", "lb", [3])];
    const card = plainCard({ bands: [plainBand(steps)] });
    const at = (text: string) => minorOf(rated({ card, weight: weighed(text) }));
    expect(["5 oz", "5.001 oz", "15.999 oz", "16 oz", "1 lb", "1.001 lb"].map(at)).toEqual([
      1,
      2,
      2,
      3,
      3,
      "tooHeavy",
    ]);
  });

  it("adds the price of each further unit begun", () => {
    const beyond: RateBand["beyond"] = {
      kind: "perFurther",
      each: typed("500", "g"),
      prices: [minorUnits(120)],
    };
    const card = plainCard({ bands: [plainBand([stepUpTo("5", "kg", [1100])], { beyond })] });
    const at = (text: string) => minorOf(rated({ card, weight: weighed(text) }));
    expect(["5 kg", "5.001 kg", "5.5 kg", "5.501 kg", "7 kg"].map(at)).toEqual([
      1100, 1220, 1220, 1340, 1580,
    ]);
  });

  it("puts a parcel into the first band that takes its size and its weight", () => {
    const into = (sizes: string, weight: string) => {
      const rating = rated({ card: banded, size: sized(sizes), weight: weighed(weight) });
      return rating.kind === "priced" ? `${rating.step.band.name} ${rating.minor}` : rating.kind;
    };
    expect(into("16 x 35 x 45 cm", "2 kg")).toBe("Small parcel 450");
    expect(into("17 x 17 x 17 cm", "100 g")).toBe("Medium parcel 900");
    expect(into("40 x 30 x 10 cm", "2.001 kg")).toBe("Medium parcel 900");
    expect(into("40 x 30 x 10 cm", "20.001 kg")).toBe("tooHeavy");
    expect(into("62 x 30 x 10 cm", "100 g")).toBe("tooLarge");
    expect(into("62 x 30 x 10 cm", "25 kg")).toBe("tooLarge");
  });

  it("names each band's reason where none takes it", () => {
    const rating = rated({ card: banded, size: sized("50 x 30 x 10 cm"), weight: weighed("21 kg") });
    expect(rating).toEqual({
      kind: "tooHeavy",
      reasons: ["Medium parcel: The packed weight is over the last step; its last step is 20 kg."],
    });
    const large = rated({ card: banded, size: sized("70 x 20 x 10 cm") });
    expect(large).toEqual({
      kind: "tooLarge",
      reasons: [
        "Small parcel: The longest side is 70 cm; at most 45 cm is taken.",
        "Medium parcel: The longest side is 70 cm; at most 61 cm is taken.",
      ],
    });
  });

  it("pays by size where that is more, in the rule's zones and in bands that count it", () => {
    const zoned = { ...rule, zones: ["far"] };
    const steps = [stepUpTo("1", "kg", [400, 500]), stepUpTo("6", "kg", [900, 1000])];
    const card = plainCard({ zones: ["near", "far"], bands: [plainBand(steps)], dimensional: zoned });
    const size = sized("40 x 30 x 25 cm");
    expect(minorOf(rated({ card, size, zone: "near" }))).toBe(400);
    expect(minorOf(rated({ card, size, zone: "far" }))).toBe(1000);
    const flat = { ...card, bands: [plainBand(steps, { countsSize: false })] };
    expect(minorOf(rated({ card: flat, size, zone: "far" }))).toBe(500);
    expect(rated({ card, size: sized("40 x 30 x 26 cm"), zone: "far" })).toEqual({
      kind: "tooHeavy",
      reasons: ["The weight by size is over the last step; its last step is 6 kg."],
    });
  });

  it("holds a limit of weight against the packed weight, not the weight by size", () => {
    const walls = { ...NO_WALLS, weight: typed("2", "kg") };
    const card = plainCard({
      bands: [plainBand([stepUpTo("6", "kg", [900])], { walls })],
      dimensional: rule,
    });
    const size = sized("40 x 30 x 25 cm");
    expect(minorOf(rated({ card, size, weight: weighed("2 kg") }))).toBe(900);
    expect(minorOf(rated({ card, size, weight: weighed("2.001 kg") }))).toBe("tooHeavy");
  });

  it("adds the fees of the step", () => {
    const groups = [
      {
        zones: null,
        rows: [
          { upTo: typed("1", "kg"), minor: minorUnits(40) },
          { upTo: null, minor: minorUnits(60) },
        ],
      },
    ];
    const fees = [
      { name: "season", validFrom: null, validTo: null, when: { kind: "always" as const }, groups },
    ];
    const at = (text: string) => minorOf(rated({ card: plainCard({ fees }), weight: weighed(text) }));
    expect(["0.9 kg", "1.2 kg"].map(at)).toEqual([440, 710]);
  });

  it("tells a day without a card, a zone that is not on it, and a zone without a price", () => {
    expect(rated({ shipDay: day("2025-12-31") }).kind).toBe("noCard");
    expect(rated({ zone: "moon" }).kind).toBe("noZone");
    const holed = plainCard({
      bands: [{ ...plainBand([]), steps: [{ upTo: typed("1", "kg"), prices: [null] }] }],
    });
    expect(rated({ card: holed }).kind).toBe("noPrice");
  });

  it("has nothing to carry a parcel with where a band has no step", () => {
    expect(rated({ card: plainCard({ bands: [plainBand([])] }) })).toEqual({
      kind: "tooHeavy",
      reasons: ["The packed weight is over the last step; it has no steps."],
    });
  });

  it("never costs less when it weighs more, on a card that rises", () => {
    const card = plainCard({ dimensional: rule, roundUpTo: typed("0.3", "kg") });
    const mg = fc.integer({ min: 1, max: 5_000_000 });
    const side = fc.integer({ min: 1, max: 28 });
    fc.assert(
      fc.property(mg, mg, side, (one, other, cm) => {
        const [light, heavy] = [Math.min(one, other), Math.max(one, other)].map((each) =>
          rated({
            card,
            size: sized(`${cm} x ${cm} x ${cm} cm`),
            weight: massAsStored(milligrams(each), { measures: "metric" }),
          }),
        );
        const costs = [light, heavy].map((each) =>
          each?.kind === "priced" ? each.minor : Number.POSITIVE_INFINITY,
        );
        expect(costs[0]).toBeLessThanOrEqual(costs[1] ?? Number.NaN);
      }),
    );
  });
});

describe("what a band bills", () => {
  it("leaves the rule by size out in other zones and in bands that do not count it", () => {
    const card = plainCard({ zones: ["home", "far"], dimensional: { ...rule, zones: ["far"] } });
    const parcel = { ...question, card, weight: { ng: ratio(1n), text: "" } };
    expect(billableQuestion(parcel, plainBand([])).rule).toBeNull();
    expect(billableQuestion({ ...parcel, zone: "far" }, plainBand([])).rule).toBe(card.dimensional);
    expect(
      billableQuestion({ ...parcel, zone: "far" }, plainBand([], { countsSize: false })).rule,
    ).toBeNull();
  });
});
