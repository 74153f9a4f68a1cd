import { expect } from "vitest";
import { cardOn } from "#lib/postage/card-on";
import type { RateCard, WeightStep } from "#lib/postage/rate-card";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import type { FeeGroup, RateFee } from "#lib/postage/rate-fee";
import { type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { ratio } from "#lib/postage/ratio";
import { NO_WALLS } from "#lib/postage/size-walls";
import type { TypedMass } from "#lib/postage/typed-measure";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
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

const ZONES = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];
const UNTIL_PEAK = "2025-10-05";

/** Invented prices that rise with weight and zone. */
const rising = (row: number): readonly number[] => ZONES.map((_, zone) => 500 + 100 * row + 10 * zone);
const POUNDS: readonly WeightStep[] = Array.from({ length: 70 }, (_, at) =>
  stepUpTo(String(at + 1), "lb", rising(at + 4)),
);
const OUNCES = ["4", "8", "12", "15.999"].map((text, at) => stepUpTo(text, "oz", rising(at)));

const OVERSIZED = plainBand([stepUpTo("70", "lb", rising(90))], {
  name: "oversized",
  walls: { ...NO_WALLS, lengthAndGirth: typed("130", "in") },
  countsSize: false,
});
const STANDARD = {
  name: "standard",
  walls: { ...NO_WALLS, lengthAndGirth: typed("108", "in") },
};

const rowsOf = (...minor: readonly number[]): FeeGroup["rows"] =>
  minor.map((each, at) => {
    const upTo = ["3", "10", "25"][at];
    return { upTo: upTo === undefined ? null : typed(upTo, "lb"), minor: minorUnits(each) };
  });
/** Seasonal additions of 2025, retail: https://news.usps.com/daily/2025/10/07/ */
const peak = (far: FeeGroup["rows"]): RateFee => ({
  name: "peak season",
  validFrom: day(UNTIL_PEAK),
  validTo: day("2026-01-18"),
  when: { kind: "always" },
  groups: [
    { zones: ["1", "2", "3", "4"], rows: rowsOf(40, 60, 95, 300) },
    { zones: ["5", "6", "7", "8", "9"], rows: far },
  ],
});

const service = (name: string, change: Partial<RateCard>): RateCard =>
  plainCard({ service: name, currency: "USD", validFrom: day("2025-07-13"), zones: ZONES, ...change });

/** Rows of the ground card (ounces, pounds, oversized) are from memory. */
const CARDS = [
  service("priority", { bands: [plainBand(POUNDS)], fees: [peak(rowsOf(90, 145, 325, 700))] }),
  service("ground", {
    bands: [plainBand([...OUNCES, ...POUNDS], STANDARD), OVERSIZED],
    fees: [peak(rowsOf(50, 100, 200, 575))],
  }),
];

function cardOf(name: string): RateCard {
  const found = CARDS.find((card) => card.service === name);
  if (found === undefined) throw new RangeError(`cardOf requires a service, got ${name}`);
  return found;
}

function rated(card: RateCard, zone: string, weight: string, shipDay: string): Rating {
  return ratedParcel({ card, zone, weight: weighed(weight), size: null, shipDay: day(shipDay) });
}

function stepOf(rating: Rating): TypedMass | null {
  return rating.kind === "priced" ? (rating.step.band.steps[rating.step.stepAt]?.upTo ?? null) : null;
}

function checkStep(given: GivenCase, name: string, weight: string): void {
  const step = stepOf(rated(cardOf(name), "5", weight, "2025-09-01"));
  if (given.expects("rowLb")) given.meets("rowLb", step?.unit === "lb" ? Number(step.text) : null);
  if (given.expects("rowOz")) given.meets("rowOz", step?.unit === "oz" ? Number(step.text) : null);
}

function addition(name: string, zone: string, weight: string, shipDay: string): number {
  const rating = rated(cardOf(name), zone, weight, shipDay);
  if (rating.kind !== "priced") throw new RangeError(`addition requires a price, got ${rating.kind}`);
  return (rating.minor - rating.stepMinor) / 100;
}

/** Cells quoted from a price list in public repositories (secondary); for look-ups only, not current prices. */
const CELLS = [
  service("ground commercial", {
    validFrom: day("2026-07-12"),
    validTo: day("2026-10-03"),
    zones: ["1"],
    bands: [plainBand([stepUpTo("4", "oz", [693]), stepUpTo("8", "oz", [693])])],
  }),
  service("ground commercial", {
    validFrom: day("2026-10-04"),
    zones: ["5"],
    bands: [plainBand([stepUpTo("15.999", "oz", [824]), stepUpTo("3", "lb", [1212])])],
  }),
  service("priority-flat-medium-box retail", {
    validFrom: day("2026-07-12"),
    zones: ["any"],
    bands: [plainBand([stepUpTo("70", "lb", [2480])])],
  }),
];

function checkCell(given: GivenCase): void {
  const name = `${given.text("service")} ${given.text("channel")}`;
  const shipDay = given.text("effective");
  const found = cardOn(CELLS, name, day(shipDay));
  if (found.kind !== "card") throw new RangeError(`checkCell requires a card, got ${found.kind}`);
  const pounds = given.has("weightLb") ? `${given.text("weightLb")} lb` : "2 lb";
  const weight = given.has("weightOz") ? `${given.text("weightOz")} oz` : pounds;
  const rating = rated(found.card, given.has("zone") ? given.text("zone") : "any", weight, shipDay);
  given.meets("usd", rating.kind === "priced" ? rating.minor / 100 : null);
}

const minorOf = (rating: Rating) => (rating.kind === "priced" ? rating.minor : null);

checkPostageCases("rateStructure", [
  [
    /^step-(1.2lb|exact-pound|minimum)$/,
    (given) => checkStep(given, "priority", `${given.text("weightLb")} lb`),
  ],
  [/^step-(15.999|16)oz$/, (given) => checkStep(given, "ground", `${given.text("weightOz")} oz`)],
  [
    /^zones$/,
    (given) => {
      const card = cardOf("priority");
      const priced = [...ZONES, "10"].filter(
        (zone) => rated(card, zone, "1 lb", "2025-09-01").kind === "priced",
      );
      given.meets("zones", priced.map(Number));
    },
  ],
  [
    /^zone-9-meaning$/,
    (given) => {
      // As zone 9 is a place and not a distance, a card in which it costs less than zone 8 is no fault.
      const cheap = rising(0).with(8, 100);
      const card = service("priority", { bands: [plainBand([stepUpTo("1", "lb", cheap)])] });
      given.meets("isDistanceBand", rateCardFaults(card).length > 0);
      given.notReckoned("territory");
    },
  ],
  [
    /^zone-depends-on-both-ends$/,
    (given) => {
      // The zone is asked for with each parcel and never worked out from where it goes.
      const [near, far] = ["3", "8"].map((zone) =>
        minorOf(rated(cardOf("ground"), zone, "2 lb", "2025-09-01")),
      );
      given.meets("zoneMayChange", near !== far);
    },
  ],
  [
    /^peak25-(priority|ground)-/,
    (given) => {
      const weight = `${given.text("weightLb")} lb`;
      given.meets(
        "adderUsd",
        addition(given.text("service"), given.text("zone"), weight, given.text("shipDate")),
      );
    },
  ],
  [
    /^peak25-window-/,
    (given) => {
      const added = ["priority", "ground"].map((name) => addition(name, "1", "1 lb", given.text("shipDate")));
      given.meets(
        "adderApplies",
        added.every((each) => each > 0),
      );
    },
  ],
  [/^cell-/, checkCell],
  [
    /^fr2026-priority-unchanged$/,
    (given) => {
      // The rule by size changed on that day and the table did not: what is under the floor costs the same.
      const change = day(given.text("change"));
      const rule = { divisor: exact("139"), lengthUnit: "in", massUnit: "lb", floor: exact("1728") } as const;
      const rest = {
        result: { kind: "up", to: ratio(1n) },
        shapeFactor: null,
        atMost: null,
        zones: null,
      } as const;
      const before = {
        ...rule,
        ...rest,
        divisor: exact("166"),
        sides: { kind: "nearest", to: ratio(1n) },
      } as const;
      const after = { ...rule, ...rest, sides: { kind: "up", to: ratio(1n) } } as const;
      const bands = [plainBand(POUNDS)];
      const cards = [
        service("priority", { bands, dimensional: before, validTo: day("2026-07-11") }),
        service("priority", { bands, dimensional: after, validFrom: change }),
      ];
      const cost = (sizes: string, shipDay: string) => {
        const found = cardOn(cards, "priority", day(shipDay));
        if (found.kind !== "card") throw new RangeError(`cost requires a card, got ${found.kind}`);
        const parcel = { card: found.card, zone: "4", weight: weighed("3 lb"), size: sized(sizes) };
        return minorOf(ratedParcel({ ...parcel, shipDay: day(shipDay) }));
      };
      given.meets(
        "baseTableChanged",
        cost("10 x 10 x 10 in", "2026-07-11") !== cost("10 x 10 x 10 in", change),
      );
      expect(cost("12.2 x 12 x 12 in", change)).not.toBe(cost("12.2 x 12 x 12 in", "2026-07-11"));
    },
  ],
]);
