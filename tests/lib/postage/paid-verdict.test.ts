import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PaidParcel, type PaidReason, paidVerdict } from "#lib/postage/paid-verdict";
import type { RateCard } from "#lib/postage/rate-card";
import { ratedParcel } from "#lib/postage/rated-parcel";
import { stepWords } from "#lib/postage/step-words";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { soundCards } from "./card-rows/sound-card";
import { exact, plainBand, plainCard, sized, stepUpTo, typed, weighed } from "./rate-card-fixture";

const card = plainCard({
  zones: ["near", "far"],
  bands: [
    plainBand([
      stepUpTo("1", "kg", [400, 500]),
      stepUpTo("2", "kg", [650, 900]),
      stepUpTo("5", "kg", [1100, 1500]),
    ]),
  ],
});
const letters = plainCard({
  service: "letters",
  zones: ["near"],
  bands: [plainBand([stepUpTo("500", "g", [310])])],
});
const parcel: PaidParcel = {
  paidMinor: 400,
  shipDay: day("2026-11-25"),
  zone: "near",
  weight: weighed("400 g"),
  size: null,
};
const told = (change: Partial<PaidParcel>, cards: readonly RateCard[] = [card, letters]) => {
  const verdict = paidVerdict({ ...parcel, ...change }, cards, ["tracked", "letters"]);
  switch (verdict.kind) {
    case "agrees":
      return `agrees with ${verdict.service}`;
    case "notTold":
      return verdict.why;
    default:
      return `${verdict.kind} ${verdict.byMinor}: ${toldReason(verdict.reason)}`;
  }
};

function toldReason(reason: PaidReason | null): string {
  if (reason?.kind === "step") return `step ${reason.stepsUp} ${stepWords(reason.step)}`;
  return reason?.kind === "zone" ? reason.zone : (reason?.kind ?? "nothing");
}

describe("what was paid, held against the cards", () => {
  it("agrees to the coin with any service of the shop", () => {
    expect(told({})).toBe("agrees with tracked");
    expect(told({ paidMinor: 310 })).toBe("agrees with letters");
    expect(told({ paidMinor: 401 })).toBe("over 1: nothing");
  });

  it("has the reason that explains it exactly: a step, else a zone", () => {
    expect(told({ paidMinor: 650 })).toBe("over 250: step 1 up to 2 kg");
    expect(told({ paidMinor: 1100 })).toBe("over 700: step 2 up to 5 kg");
    expect(told({ weight: weighed("1.5 kg") })).toBe("under 250: step -1 up to 1 kg");
    expect(told({ paidMinor: 500 })).toBe("over 100: far");
  });

  it("has size as the reason where its rule or its fee does", () => {
    const dimensional = {
      divisor: exact("5000"),
      lengthUnit: "cm",
      massUnit: "kg",
      floor: exact("10000"),
      sides: { kind: "none" },
      result: { kind: "none" },
      shapeFactor: null,
      atMost: null,
      zones: null,
    } as const;
    const wide = { ...card, dimensional };
    const size = sized("20 x 20 x 20 cm");
    // 8,000 cm³ is under the floor; 1.6 kg by size would be one step up, which explains it as well and goes first.
    expect(told({ paidMinor: 650, size }, [wide])).toBe("over 250: step 1 up to 2 kg");
    const fees = [
      {
        name: "long",
        validFrom: null,
        validTo: null,
        when: { kind: "side", which: "longest", over: typed("18", "cm"), upTo: null } as const,
        groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(77) }] }],
      },
    ];
    expect(told({ size }, [{ ...wide, fees }])).toBe("under 77: sizeLeftOut");
    const two = {
      ...wide,
      bands: [
        plainBand([
          stepUpTo("1", "kg", [400, 500]),
          ...[1.1, 1.2, 1.3, 1.6].map((kg, at) => stepUpTo(String(kg), "kg", [500 + 10 * at, 900 + at])),
        ]),
      ],
    };
    expect(told({ paidMinor: 530, size }, [two])).toBe("over 130: sizeCounted");
  });

  it("can't be told without weight, zone, card or price, nor without a size that counts", () => {
    expect(told({ weight: null })).toBe("noWeight");
    expect(told({ zone: null })).toBe("noZone");
    expect(told({ shipDay: day("2025-12-31") })).toBe("noCard");
    expect(told({}, [])).toBe("noCard");
    expect(told({ zone: "moon" })).toBe("zoneOffCard");
    expect(told({ weight: weighed("9 kg") })).toBe("notCarried");
    const walls = { longest: typed("60", "cm"), lengthAndGirth: null, sides: null, weight: null };
    expect(told({}, [{ ...card, bands: [plainBand(card.bands[0]?.steps ?? [], { walls })] }])).toBe("noSize");
  });

  it("agrees, on any sound card, with what the card says itself", () => {
    fc.assert(
      fc.property(soundCards, fc.integer({ min: 1, max: 4_000 }), ({ card: any }, grams) => {
        const [zone = ""] = any.zones;
        const weight = weighed(`${grams} g`);
        const rating = ratedParcel({
          card: any,
          zone,
          weight,
          size: sized("12 x 9 x 8 in"),
          shipDay: any.validFrom,
        });
        if (rating.kind !== "priced") return;
        const paid = {
          paidMinor: rating.minor,
          shipDay: any.validFrom,
          zone,
          weight,
          size: sized("12 x 9 x 8 in"),
        };
        expect(paidVerdict(paid, [any], [any.service]).kind).toBe("agrees");
        expect(paidVerdict({ ...paid, paidMinor: rating.minor + 1 }, [any], [any.service])).toMatchObject({
          kind: "over",
          byMinor: 1,
        });
      }),
      { numRuns: 100 },
    );
  });
});
