import { describe, expect, it } from "vitest";
import { cardOn } from "#lib/postage/card-on";
import { massAsStored } from "#lib/postage/exact-mass";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import { ratedParcel } from "#lib/postage/rated-parcel";
import { day } from "#lib/units/day";
import { MILLIGRAMS_PER_POUND, milligrams } from "#lib/units/mass";
import { demoRateCards } from "#prisma/demo/demo-rate-card";
import { DEMO_ZONES } from "#prisma/demo/demo-terms";

const kept = demoRateCards(day("2025-05-29"), day("2026-11-26"));
const cards = kept.map(({ card }) => card);
const price = (service: string, zone: string, pounds: number, on: string) => {
  const found = cardOn(cards, service, day(on));
  if (found.kind !== "card") return found.kind;
  const weight = massAsStored(milligrams(Math.round(pounds * MILLIGRAMS_PER_POUND)), {
    measures: "imperial",
  });
  const rating = ratedParcel({ card: found.card, zone, weight, size: null, shipDay: day(on) });
  return rating.kind === "priced" ? rating.minor : rating.kind;
};

describe("the demo's rate cards", () => {
  it("are sound, say that they are invented, and have the parcels' own first", () => {
    const errors = cards.flatMap(rateCardFaults).filter(({ severity }) => severity === "error");
    expect(errors).toEqual([]);
    expect(kept.map(({ source }) => source)).toEqual(kept.map(() => "invented for the demo"));
    expect(cards[0]?.service).toBe("Parcels");
  });

  it("charge a first price and one for each pound begun, as the demo's parcels paid", () => {
    for (const { id, startMinor, poundMinor } of DEMO_ZONES) {
      expect([0.3, 1, 2.2, 30].map((pounds) => price("Parcels", id, pounds, "2026-11-26"))).toEqual(
        [1, 1, 3, 30].map((pounds) => startMinor + pounds * poundMinor),
      );
    }
  });

  it("are followed by a dearer one when the year ends, without a hole", () => {
    const zone = DEMO_ZONES[0]?.id ?? "";
    const [last, first] = [price("Parcels", zone, 3, "2026-12-31"), price("Parcels", zone, 3, "2027-01-01")];
    expect(Number(first)).toBeGreaterThan(Number(last));
  });

  it("take letters up to a pound less a little", () => {
    expect(price("Letter box", "near", 0.9, "2026-11-26")).toBe(445);
    expect(price("Letter box", "near", 1, "2026-11-26")).toBe("tooHeavy");
    expect(price("Letter box", "abroad", 0.9, "2026-11-26")).toBe("noPrice");
  });
});
