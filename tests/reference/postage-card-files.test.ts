import { describe, expect, it } from "vitest";
import { billableWeight } from "#lib/postage/billable-weight";
import { cardOn } from "#lib/postage/card-on";
import { cardRows } from "#lib/postage/card-rows/card-rows";
import { readCardRows } from "#lib/postage/card-rows/read-card-rows";
import { massIn } from "#lib/postage/exact-mass";
import type { RateCard } from "#lib/postage/rate-card";
import { billableQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { ratioNumber } from "#lib/postage/ratio";
import { day } from "#lib/units/day";
import { plainBand, sized, weighed } from "../lib/postage/rate-card-fixture";
import { type PublishedCase, readCases } from "./published-cases";

// The published rules of data/postage-cases.json, typed as a file of cards, read, written and read again: what a kept card
// says must answer the cases as well as the rules themselves do. Each case carries its source. Prices are invented, but for
// the seasonal additions of 2025 (https://news.usps.com/daily/2025/10/07/).

const CASES = readCases<"dimensionalWeight" | "rateStructure" | "sizeLimits">("postage-cases.json");
const ZONES = "1,2,3,4,5,6,7,8,9";
const NINE = (price: string) => Array.from({ length: 9 }, () => price).join(",");
const HEAD = `row,what,value,${ZONES}`;
const POUNDS = Array.from(
  { length: 70 },
  (_, at) => `step,up to,${at + 1} lb,${NINE((6 + at / 10).toFixed(2))}`,
);

const sizeRule = (divisor: string, rounding: string, zones = "") => [
  `size,divisor,${divisor} in³ per lb`,
  "size,more than,1728 in³",
  `size,each side,${rounding} 1 in`,
  "size,weight,up to 1 lb",
  "size,no box,0.785",
  ...(zones === "" ? [] : [`size,zones,,${zones}`]),
];
const postal = (from: string, to: string, rule: readonly string[]) => [
  "card,service,postal-us",
  `card,from,${from}`,
  ...(to === "" ? [] : [`card,to,${to}`]),
  "card,weight,up to 1 lb",
  ...POUNDS,
  ...rule,
];
const amounts = (weight: string, near: string, far: string) =>
  `fee,${weight},${[near, near, near, near, far, far, far, far, far].join(",")}`;
const peak = (far: readonly [string, string, string, string]) => [
  "fee,name,peak season",
  "fee,from,2025-10-05",
  "fee,to,2026-01-18",
  amounts("up to,3 lb", "0.40", far[0]),
  amounts("up to,10 lb", "0.60", far[1]),
  amounts("up to,25 lb", "0.95", far[2]),
  amounts("any weight,", "3.00", far[3]),
];
const OUNCES = ["4 oz", "8 oz", "12 oz", "15.999 oz"].map(
  (step, at) => `step,up to,${step},${NINE(`5.${at}0`)}`,
);

const FILE = [
  HEAD,
  ...postal("2007-01-01", "2019-06-22", sizeRule("194", "nearest", ",,,,yes,yes,yes,yes,yes")),
  ...postal("2019-06-23", "2026-07-11", sizeRule("166", "nearest")),
  ...postal("2026-07-12", "", sizeRule("139", "up to")),
  ...[
    "card,service,priority",
    "card,from,2025-07-13",
    "band,length and girth,108 in",
    "band,heaviest,70 lb",
    ...POUNDS,
  ],
  ...peak(["0.90", "1.45", "3.25", "7.00"]),
  ...[
    "card,service,ground",
    "card,from,2025-07-13",
    "band,name,standard",
    "band,length and girth,108 in",
    "band,heaviest,70 lb",
  ],
  ...OUNCES,
  ...POUNDS,
  ...[
    "band,name,oversized",
    "band,length and girth,130 in",
    "band,heaviest,70 lb",
    "band,by size,no",
    `step,up to,70 lb,${NINE("90.00")}`,
  ],
  ...peak(["0.50", "1.00", "2.00", "5.75"]),
  // Amounts as of 2022 (https://eseller365.com/usps-prc-delay-nonstandard-fees-april-2022/).
  ...["card,service,sized", "card,from,2025-07-13", ...POUNDS],
  ...[
    "fee,name,over-22-to-30",
    "fee,longest side over,22 in",
    "fee,but not over,30 in",
    `fee,any weight,,${NINE("4.00")}`,
  ],
  ...["fee,name,over-30", "fee,longest side over,30 in", `fee,any weight,,${NINE("15.00")}`],
  ...["fee,name,volume", "fee,volume over,3456 in³", `fee,any weight,,${NINE("15.00")}`],
];

const terms = { measures: "imperial", currency: "USD", zones: null } as const;
function readCards(lines: readonly (readonly string[])[]): readonly RateCard[] {
  const read = readCardRows(
    lines.map((cells, at) => ({ line: at + 1, cells })),
    terms,
  );
  if (read.kind === "unreadable") throw new RangeError(JSON.stringify(read.problems));
  return read.cards.map(({ card }) => card);
}
const TYPED = readCards(FILE.map((line) => line.split(",")));
/** Read, written and read again. */
const CARDS = readCards(cardRows(TYPED.map((card) => ({ card, source: null, readOn: null }))));

function cardFor(service: string, shipDate: string): RateCard {
  const found = cardOn(CARDS, service, day(shipDate));
  if (found.kind !== "card")
    throw new RangeError(`cardFor requires a card of ${service} on ${shipDate}, got ${found.kind}`);
  return found.card;
}
const text = ({ input }: PublishedCase, name: string) => String(input[name]);
const sidesOf = (each: PublishedCase) =>
  `${text(each, "lengthIn")} x ${text(each, "widthIn")} x ${text(each, "heightIn")} in`;
const added = (rating: Rating) =>
  rating.kind === "priced" ? (rating.minor - rating.stepMinor) / 100 : Number.NaN;

describe("published rules as kept cards", () => {
  it("come back from a file as they were typed", () => {
    expect(CARDS).toEqual(TYPED);
  });

  const byRule = CASES.dimensionalWeight.filter(
    ({ input, expected }) => input["method"] === "postal-us" && "shipDate" in input && "billedLb" in expected,
  );
  it("have cases before and from 12 July 2026", () => {
    const days = byRule.map((each) => text(each, "shipDate"));
    expect([days.some((on) => on < "2026-07-12"), days.some((on) => on >= "2026-07-12")]).toEqual([
      true,
      true,
    ]);
  });
  it.each(byRule)("bill by the rule of the ship date: $id ($basis)", (each) => {
    const card = cardFor("postal-us", text(each, "shipDate"));
    const shape = each.input["shape"] === "nonrectangular" ? "other" : "box";
    const question = {
      card,
      zone: "5",
      weight: weighed(`${text(each, "actualLb")} lb`),
      size: sized(sidesOf(each), shape),
      shipDay: day(text(each, "shipDate")),
    };
    const { ng } = billableWeight(billableQuestion(question, card.bands[0] ?? plainBand([])));
    expect(ratioNumber(massIn(ng, "lb"))).toBe(each.expected["billedLb"]);
    // The price follows the billed weight.
    const rating = ratedParcel(question);
    expect(rating.kind === "priced" ? rating.stepMinor : null).toBe(
      600 + 10 * (Number(each.expected["billedLb"]) - 1),
    );
  });

  it.each(CASES.rateStructure.filter(({ id }) => /^peak25-(priority|ground)-/.test(id)))(
    "add the season: $id ($basis)",
    (each) => {
      const rating = ratedParcel({
        card: cardFor(text(each, "service"), text(each, "shipDate")),
        zone: text(each, "zone"),
        weight: weighed(`${text(each, "weightLb")} lb`),
        size: null,
        shipDay: day(text(each, "shipDate")),
      });
      expect(added(rating)).toBe(each.expected["adderUsd"]);
    },
  );

  it.each(CASES.sizeLimits.filter(({ id }) => /^limit-(priority|ground)-/.test(id)))(
    "take or refuse by length and girth: $id ($basis)",
    (each) => {
      // A parcel of 10 x 10 in, 40 in round.
      const length = (Number(text(each, "lengthPlusGirthIn")) - 40).toFixed(1);
      const rating = ratedParcel({
        card: cardFor(text(each, "service"), "2026-06-01"),
        zone: "4",
        weight: weighed("5 lb"),
        size: sized(`${length} x 10 x 10 in`),
        shipDay: day("2026-06-01"),
      });
      expect(rating.kind === "priced").toBe(each.expected["accepted"]);
      const category = each.expected["priceCategory"];
      if (category !== undefined)
        expect(rating.kind === "priced" ? rating.step.band.name : null).toBe(category);
    },
  );

  it.each(CASES.sizeLimits.filter(({ id }) => /^fee-/.test(id)))(
    "charge the fees for size: $id ($basis)",
    (each) => {
      const rating = ratedParcel({
        card: cardFor("sized", "2026-06-01"),
        zone: "4",
        weight: weighed("5 lb"),
        size: sized(sidesOf(each)),
        shipDay: day("2026-06-01"),
      });
      const names = rating.kind === "priced" ? rating.fees.map(({ name }) => name) : [];
      const tiers = names.filter((name) => name !== "volume");
      expect(tiers.length === 0 ? "none" : tiers.join()).toBe(each.expected["lengthFeeTier"]);
      expect(names.includes("volume")).toBe(each.expected["volumeFee"]);
    },
  );

  it("keep ounces as typed: 15.9 oz pays 15.999 oz, 16 oz the pound", () => {
    const step = (weight: string) => {
      const rating = ratedParcel({
        card: cardFor("ground", "2025-09-01"),
        zone: "5",
        weight: weighed(weight),
        size: null,
        shipDay: day("2025-09-01"),
      });
      return rating.kind === "priced" ? rating.step.band.steps[rating.step.stepAt]?.upTo : null;
    };
    expect([step("15.9 oz"), step("16 oz")]).toMatchObject([
      { text: "15.999", unit: "oz" },
      { text: "1", unit: "lb" },
    ]);
  });
});
