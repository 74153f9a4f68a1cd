import { describe, expect, it } from "vitest";
import { parcelPrice } from "#lib/postage/parcel-price";
import type { ParcelQuestion } from "#lib/postage/rated-parcel";
import { ratio } from "#lib/postage/ratio";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { exact, plainBand, plainCard, sized, stepUpTo, typed, weighed } from "./rate-card-fixture";

const card = plainCard({
  service: "ground",
  currency: "USD",
  zones: ["5"],
  bands: [plainBand([stepUpTo("1", "lb", [700]), stepUpTo("14", "lb", [1900])])],
  roundUpTo: typed("1", "lb"),
  dimensional: {
    divisor: exact("139"),
    lengthUnit: "in",
    massUnit: "lb",
    floor: exact("1728"),
    sides: { kind: "up", to: ratio(1n) },
    result: { kind: "up", to: ratio(1n) },
    shapeFactor: null,
    atMost: null,
    zones: null,
  },
  fees: [
    {
      name: "peak season",
      validFrom: day("2026-10-04"),
      validTo: day("2027-01-17"),
      when: { kind: "always" },
      groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(195) }] }],
    },
  ],
});
const question: ParcelQuestion = {
  card,
  zone: "5",
  weight: weighed("3 lb"),
  size: sized("12.2 x 12 x 12 in"),
  shipDay: day("2026-11-25"),
};
const told = (change: Partial<ParcelQuestion>) =>
  parcelPrice({ ...question, ...change }).explanation.map(
    ({ label, value, note }) => `${label}: ${value}. ${note ?? ""}`,
  );

describe("the price of a parcel", () => {
  it("comes with every step of the way, from the sizes as typed to the postage", () => {
    const price = parcelPrice(question);
    expect(price.kind === "priced" ? [price.minor, price.stepMinor] : price.kind).toEqual([2095, 1900]);
    expect(told({})).toEqual([
      "Outside sizes: 12.2 x 12 x 12 in. At the widest.",
      "Rounded: 13 × 12 × 12 in. Each side up to a whole in.",
      "Volume: 1,872 in³. ",
      "Size counts: yes. It takes more than 1,728 in³.",
      "Dimensional weight: 14 lb. Volume ÷ 139 in³ for each lb = about 13.468, up to a whole lb.",
      "Packed weight: 3 lb. ",
      "Billed weight: 14 lb. By size, the greater of the two, up to a multiple of 1 lb.",
      "Step: up to 14 lb. ",
      "Price: $19.00. Zone 5, ground.",
      "Fee: $1.95. peak season",
      "Postage: $20.95. By the card from 1 Jan 2026.",
    ]);
  });

  it("says what is left out where the sizes are not known", () => {
    expect(told({ size: null })[0]).toBe(
      "Outside sizes: not known. Size limits, dimensional weight and fees for size are left out.",
    );
  });

  it("tells the further units beyond the last step", () => {
    const beyond = { kind: "perFurther" as const, each: typed("1", "lb"), prices: [minorUnits(80)] };
    const longer = plainCard({
      currency: "USD",
      bands: [plainBand([stepUpTo("1", "lb", [700])], { beyond })],
    });
    expect(told({ card: longer, zone: "home", size: null }).slice(-3)).toEqual([
      "Step: up to 3 lb. ",
      "Price: $8.60. Zone home, tracked, with 2 × 1 lb beyond the last step.",
      "Postage: $8.60. By the card from 1 Jan 2026.",
    ]);
  });

  it("gives the reason and the way out where there is none", () => {
    expect(told({ weight: weighed("15 lb") })).toEqual([
      "Too heavy: not carried. The packed weight is over the last step; its last step is 14 lb. Choose another service, or pack it as two parcels.",
    ]);
    const walls = { ...NO_WALLS, longest: typed("12", "in") };
    expect(
      told({ card: { ...card, bands: [plainBand([stepUpTo("14", "lb", [1900])], { walls })] } }),
    ).toEqual([
      "Too large: not carried. The longest side is 12.2 in; at most 12 in is taken. Choose a smaller carton or another service.",
    ]);
    expect(told({ zone: "9" })).toEqual(["Zone: none. The card has no zone 9; it has 5."]);
    expect(told({ shipDay: day("2025-12-31") })).toEqual([
      "Rate card: none. The card of ground holds from 1 Jan 2026 on, not on 31 Dec 2025. Add the card of that day.",
    ]);
    const ended = { ...card, validTo: day("2026-06-30") };
    expect(told({ card: ended })).toEqual([
      "Rate card: none. The card of ground holds from 1 Jan 2026 to 30 Jun 2026, not on 25 Nov 2026. Add the card of that day.",
    ]);
    const holed = {
      ...card,
      bands: [{ ...plainBand([]), steps: [{ upTo: typed("14", "lb"), prices: [null] }] }],
    };
    expect(told({ card: holed }).at(-1)).toBe(
      "Price: none. Zone 5 has no price up to 14 lb. Add it to the card, or choose another service.",
    );
  });
});
