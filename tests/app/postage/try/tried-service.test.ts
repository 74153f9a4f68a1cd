import { describe, expect, it } from "vitest";
import { askedParcel } from "#app/postage/try/asked-parcel.ts";
import { triedService } from "#app/postage/try/tried-service.ts";
import { tryFinding } from "#app/postage/try/try-finding.ts";
import type { RateCard } from "#lib/postage/rate-card";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import {
  exact,
  plainBand,
  plainCard,
  sized,
  stepUpTo,
  typed,
  weighed,
} from "../../../lib/postage/rate-card-fixture";

const shown = { currency: "EUR", minorDigits: 2, measures: "metric" } as const;
const parcel = { zone: "home", weight: weighed("1.062 kg"), size: null, shipDay: day("2026-11-25") };
const dimensional = {
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
const tried = (card: RateCard, change: Partial<typeof parcel> | { size: ReturnType<typeof sized> } = {}) =>
  triedService(card.service, [card], { ...parcel, ...change }, shown);

describe("trying a parcel", () => {
  it("says what a little less weight would save, and the room that is left", () => {
    const { minor, headline, advice } = tried(plainCard());
    expect([minor, headline]).toEqual([650, "Pays the step up to 2 kg."]);
    expect(advice).toEqual([
      "62 g less would save €2.50: it would pay the step up to 1 kg.",
      "938 g of room is left in this step; the next costs €4.50 more.",
    ]);
    expect(tried(plainCard(), { weight: weighed("4.9 kg") }).advice.at(-1)).toBe(
      "100 g of room is left in this step; beyond it the parcel is not carried.",
    );
  });

  it("says a trace where what is too much can't be seen in the shop's measures", () => {
    const advice = triedService(
      "tracked",
      [plainCard()],
      { ...parcel, weight: weighed("1000.01 g") },
      {
        ...shown,
        measures: "imperial",
      },
    ).advice;
    expect(advice[0]).toBe("A trace less would save €2.50: it would pay the step up to 1 kg.");
  });

  it("says that a parcel stands at the limit of its step", () => {
    expect(tried(plainCard(), { weight: weighed("2 kg") }).advice.at(-1)).toBe(
      "It stands at the limit of its step: a finer scale may read more; the next costs €4.50 more.",
    );
  });

  it("says what a smaller size would save where the size decides", () => {
    const { advice } = tried(plainCard({ dimensional }), { size: sized("40 x 30 x 20 cm") });
    expect(advice[0]).toBe(
      "Its size decides, not its 1.062 kg. A parcel of up to 10,000 cm³, its sides rounded, would cost €6.50: €4.50 less.",
    );
  });

  it("says why a parcel is not carried, and the way out", () => {
    const walls = { ...NO_WALLS, longest: typed("30", "cm") };
    const card = plainCard({ bands: [plainBand([stepUpTo("2", "kg", [400])], { walls })] });
    const { minor, headline, lines } = tried(card, { size: sized("40 x 30 x 20 cm") });
    expect([minor, headline]).toEqual([null, "Not carried."]);
    expect(lines[0]?.note).toBe(
      "The longest side is 40 cm; at most 30 cm is taken. Choose a smaller carton or another service.",
    );
  });

  it("says that no card holds, when the last ran out and when the next begins", () => {
    const ended = plainCard({ validTo: day("2026-06-30") });
    expect(tried(ended).headline).toBe(
      "No card holds on 25 Nov 2026. The last card ran out on 30 Jun 2026. Add the card of that day.",
    );
    expect(tried(plainCard({ validFrom: day("2027-01-01") })).headline).toContain(
      "The next one begins on 1 Jan 2027.",
    );
  });

  it("finds the cheapest, and says where its size is open", () => {
    const letters = plainCard({
      service: "letters",
      bands: [
        plainBand([stepUpTo("2", "kg", [310])], { walls: { ...NO_WALLS, longest: typed("30", "cm") } }),
      ],
    });
    const both = [tried(plainCard()), tried(letters)];
    expect(tryFinding(both, shown)).toBe("Cheapest: €3.10 with letters, if its size allows.");
    expect(both[1]?.headline).toContain("Its size counts here: write three sides");
    expect(tryFinding([tried(plainCard())], shown)).toBe("€6.50 with tracked.");
    expect(tryFinding([tried(plainCard({ validTo: day("2026-06-30") }))], shown)).toContain(
      "No service takes this parcel",
    );
    expect(tryFinding(null, shown)).toBe("What would a parcel cost to send?");
  });
});

describe("the parcel that is asked for", () => {
  const terms = { measures: "imperial", zoneIds: ["near"], today: day("2026-11-25") } as const;
  const read = (query: Readonly<Record<string, string>>) => askedParcel(query, terms);

  it("has a weight and a zone; sides go before the carton, and the day is today where none is typed", () => {
    expect(read({})).toEqual({ kind: "blank" });
    expect(read({ weight: "2 lb 3 oz", zone: "near", carton: "c8" })).toMatchObject({
      asked: {
        weight: { text: "2 lb 3 oz" },
        sizes: null,
        cartonId: "c8",
        zoneId: "near",
        shipDay: "2026-11-25",
      },
    });
    expect(
      read({ weight: "8", zone: "near", carton: "c8", sizes: "12 x 9 x 8", day: "2027-01-02" }),
    ).toMatchObject({
      asked: { sizes: { um: [304_800, 228_600, 203_200] }, cartonId: null, shipDay: "2027-01-02" },
    });
  });

  it("names each field that can't be read", () => {
    const wrong = read({ weight: "heavy", zone: "moon", sizes: "12 x 9", day: "soon" });
    expect(wrong).toMatchObject({
      problems: {
        weight: expect.stringContaining("“heavy” can’t be read"),
        zone: "Choose a zone of the list.",
        sizes: "Three sides are needed: length, width and height.",
        day: "Write a day like 2026-11-25.",
      },
    });
    expect(read({ zone: "near" })).toMatchObject({ problems: { weight: "Write a weight." } });
    expect(read({ weight: "0 oz", zone: "near" })).toMatchObject({
      problems: { weight: "Write a weight above zero." },
    });
  });
});
