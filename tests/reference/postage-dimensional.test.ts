import { describe, expect, it } from "vitest";
import { billableWeight } from "#lib/postage/billable-weight";
import { cardOn } from "#lib/postage/card-on";
import { type DimensionalRule, dimensionalWeight } from "#lib/postage/dimensional-weight";
import { massIn } from "#lib/postage/exact-mass";
import type { RateCard } from "#lib/postage/rate-card";
import { billableQuestion } from "#lib/postage/rated-parcel";
import { ratio, ratioNumber, ratioQuotient } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import { day } from "#lib/units/day";
import {
  exact,
  plainBand,
  plainCard,
  sized,
  stepUpTo,
  typed,
  weighed,
} from "../lib/postage/rate-card-fixture";
import { checkPostageCases, type GivenCase } from "./postage-cases";

const ONE = ratio(1n);

// The postal rules as a seller would type them: divisors of 23 June 2019 (https://about.usps.com/postal-bulletin/2018/pb22509/html/updt_002.htm)
// and of 12 July 2026 (secondary, trade news: https://thelogisticnews.com/?p=18371); rounding to the nearest inch before
// (http://pe.usps.gov/DMMAdvisory.asp?Dest=dmmadvisory103006.htm). That 0.785 outlived the change is not confirmed.
const POSTAL: DimensionalRule = {
  divisor: exact("139"),
  lengthUnit: "in",
  massUnit: "lb",
  floor: exact("1728"),
  sides: { kind: "up", to: ONE },
  result: { kind: "up", to: ONE },
  shapeFactor: exact("0.785"),
  atMost: null,
  zones: null,
};
const ZONES = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

function postalCard(from: string, to: string | null, change: Partial<DimensionalRule>): RateCard {
  return plainCard({
    service: "postal-us",
    validFrom: day(from),
    validTo: to === null ? null : day(to),
    zones: ZONES,
    bands: [
      plainBand([
        stepUpTo(
          "70",
          "lb",
          ZONES.map(() => 1000),
        ),
      ]),
    ],
    roundUpTo: typed("1", "lb"),
    dimensional: { ...POSTAL, ...change },
  });
}

const CARDS = [
  postalCard("2007-01-01", "2019-06-22", {
    divisor: exact("194"),
    sides: { kind: "nearest", to: ONE },
    zones: ["5", "6", "7", "8", "9"],
  }),
  postalCard("2019-06-23", "2026-07-11", { divisor: exact("166"), sides: { kind: "nearest", to: ONE } }),
  postalCard("2026-07-12", null, {}),
];

function postalOn(shipDate: string): RateCard & { readonly dimensional: DimensionalRule } {
  const found = cardOn(CARDS, "postal-us", day(shipDate));
  if (found.kind !== "card" || found.card.dimensional === null) {
    throw new RangeError(`postalOn requires a card of ${shipDate}, got ${found.kind}`);
  }
  return { ...found.card, dimensional: found.card.dimensional };
}

const sizeOf = (given: GivenCase, unit: "In" | "Cm") =>
  sized(
    `${["length", "width", "height"].map((side) => given.text(`${side}${unit}`)).join(" x ")} ${unit.toLowerCase()}`,
    given.has("shape") && given.text("shape") === "nonrectangular" ? "other" : "box",
  );

function weightOf(sizes: string, rule: DimensionalRule, shape: "box" | "other" = "box"): number | null {
  const { weight } = dimensionalWeight(sized(sizes, shape), rule);
  return weight === null ? null : ratioNumber(weight);
}

function postalRule(given: GivenCase): void {
  const card = postalOn(given.text("shipDate"));
  const rule = card.dimensional;
  const divisor = ratioNumber(rule.divisor);
  given.meets("divisorIn3PerLb", divisor);
  given.meets("thresholdIn3", ratioNumber(rule.floor ?? ratio(0n)));
  const [at, above] = [weightOf("12 x 12 x 12 in", rule), weightOf("18 x 12 x 10 in", rule)];
  given.meets("comparison", at === null && above !== null ? "greater-than" : "from");
  const billedFrom = (zone: string) => {
    const parcel = {
      card,
      zone,
      weight: weighed("1 lb"),
      size: sized("18 x 12 x 10 in"),
      shipDay: card.validFrom,
    };
    return billableWeight(billableQuestion(parcel, plainBand([]))).from;
  };
  given.meets("zones", ZONES.filter((zone) => billedFrom(zone) === "dimensional").map(Number));
  const { sides } = dimensionalWeight(sized("12.2 x 12 x 12 in"), rule);
  given.meets("roundDimensions", ratioNumber(sides[0]) === 13 ? "up" : "nearest");
  if (!given.expects("roundWeight")) return;
  // One cubic inch over a whole quotient.
  const over = rounded(exact(`${divisor * 20 + 1}/${divisor}`), rule.result);
  given.meets("roundWeight", ratioNumber(over) === 21 ? "up-to-next-lb" : "other");
}

const COURIER: DimensionalRule = { ...POSTAL, floor: null };
const metric = (divisor: string): DimensionalRule => ({
  ...COURIER,
  divisor: exact(divisor),
  lengthUnit: "cm",
  massUnit: "kg",
  sides: { kind: "none" },
  result: { kind: "none" },
});

checkPostageCases("dimensionalWeightRules", [
  [/^dimrule-postal-/, postalRule],
  [
    /^dimrule-nonrectangular-factor$/,
    (given) => {
      const { volume } = dimensionalWeight(sized("20 x 14 x 14 in", "other"), POSTAL);
      given.meets("volumeFactor", ratioNumber(ratioQuotient(volume, ratio(20n * 14n * 14n))));
      // 1,800 in³ is over the floor, 0.785 of it is not.
      const isBefore =
        weightOf("18 x 10 x 10 in", POSTAL) !== null && weightOf("18 x 10 x 10 in", POSTAL, "other") === null;
      given.meets("appliedBeforeThresholdTest", isBefore);
    },
  ],
  [
    /^dimrule-courier-common$/,
    (given) => {
      given.meets("divisorIn3PerLb", 139 * (weightOf("139 x 10 x 1 in", COURIER) ?? 0) * 0.1);
      given.meets("thresholdIn3", weightOf("1 x 1 x 1 in", COURIER) === 1 ? 0 : 1728);
    },
  ],
  [
    /^dimrule-metric-/,
    (given) => {
      const divisor = given.text("method") === "volumetric-metric-air" ? "6000" : "5000";
      const kilograms = weightOf("100 x 60 x 50 cm", metric(divisor)) ?? 0;
      given.meets("divisorCm3PerKg", (100 * 60 * 50) / kilograms);
    },
  ],
]);

function checkParcel(given: GivenCase, rule: DimensionalRule): void {
  const size = sizeOf(given, "In");
  const { sides, volume, weight } = dimensionalWeight(size, rule);
  if (given.expects("roundedIn")) given.meets("roundedIn", sides.map(ratioNumber));
  if (given.expects("volumeIn3")) given.meets("volumeIn3", ratioNumber(volume));
  if (given.expects("dimWeightApplies")) given.meets("dimWeightApplies", weight !== null);
  given.meets("dimWeightLb", weight === null ? null : ratioNumber(weight));
  if (!given.expects("billedLb")) return;
  const packed = weighed(`${given.text("actualLb")} lb`);
  const { ng } = billableWeight({ weight: packed, size, rule, roundUpTo: typed("1", "lb") });
  given.meets("billedLb", ratioNumber(massIn(ng, "lb")));
}

function checkRounding(given: GivenCase, values: string, kind: "up" | "nearest", to: string): void {
  const name = given.expects("rounded") ? "rounded" : "roundedIn";
  given.meets(
    name,
    given.texts(values).map((value) => ratioNumber(rounded(exact(value), { kind, to: exact(to) }))),
  );
}

checkPostageCases("dimensionalWeight", [
  [
    /^dim-(15x15x22|exact-cubic|cliff|12x12x20|actual-wins|nonrect|half-inch)/,
    (given) => checkParcel(given, postalOn(given.text("shipDate")).dimensional),
  ],
  [/^round-off-definition$/, (given) => checkRounding(given, "values", "nearest", "0.01")],
  [/^round-up-definition$/, (given) => checkRounding(given, "values", "up", "0.01")],
  [/^dim-rounding-pair-nearest$/, (given) => checkRounding(given, "valuesIn", "nearest", "1")],
  [/^dim-rounding-pair-up$/, (given) => checkRounding(given, "valuesIn", "up", "1")],
  [
    /^dim-courier-/,
    (given) => {
      const kind = given.text("roundDimensions") === "up" ? "up" : "nearest";
      const floor = given.text("thresholdIn3") === "0" ? null : exact(given.text("thresholdIn3"));
      checkParcel(given, {
        ...COURIER,
        divisor: exact(given.text("divisorIn3PerLb")),
        floor,
        sides: { kind, to: ONE },
      });
    },
  ],
  [
    /^dim-metric-/,
    (given) => {
      const [size, rule] = [sizeOf(given, "Cm"), metric(given.text("divisorCm3PerKg"))];
      given.meets("volumetricKg", ratioNumber(dimensionalWeight(size, rule).quotient));
      const roundUpTo = given.has("roundKgUpTo") ? typed(given.text("roundKgUpTo"), "kg") : null;
      const weight = weighed(`${given.text("actualKg")} kg`);
      const { ng } = billableWeight({ weight, size, rule, roundUpTo });
      given.meets("billedKg", ratioNumber(massIn(ng, "kg")));
    },
  ],
]);

describe("the change of 12 July 2026", () => {
  // A 12 in cube carton of C flute (inside sizes) measures about 12.31 x 12.31 x 12.63 in outside: derived from the flute's
  // thickness, https://coltpaper.com/corrugated-box-guide/
  it("bills a 12 in cube carton of 4 lb at 16 lb from that day, and at 12 lb the day before", () => {
    const billedOn = (shipDate: string) => {
      const rule = postalOn(shipDate).dimensional;
      const size = sized("12.31 x 12.31 x 12.63 in");
      const { ng } = billableWeight({ weight: weighed("4 lb"), size, rule, roundUpTo: typed("1", "lb") });
      return ratioNumber(massIn(ng, "lb"));
    };
    // Until 11 July: 12 x 12 x 13 = 1,872 in³, over the floor, ÷ 166.
    expect(billedOn("2026-07-11")).toBe(12);
    expect(billedOn("2026-07-12")).toBe(16);
  });
});
