import { describe, expect, it } from "vitest";
import { postageFinding, sourceWords } from "#app/postage/postage-finding.ts";
import { shopServices } from "#app/postage/shop-services.ts";
import { day } from "#lib/units/day";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import { plainCard } from "../../lib/postage/rate-card-fixture";

const today = day("2026-11-25");
const kept = (from: string, to: string | null, service = "Parcels"): ReadRateCard => {
  const card = plainCard({ service, validFrom: day(from), validTo: to === null ? null : day(to) });
  return {
    id: `${service} ${from}`,
    card,
    source: null,
    readOn: null,
    service,
    validFrom: card.validFrom,
    validTo: card.validTo,
  };
};
const finding = (...cards: readonly ReadRateCard[]) => postageFinding(shopServices(cards, today), today);

describe("what the screen of postage found", () => {
  it("is which card holds, since when and until when", () => {
    expect(finding()).toContain("No prices yet");
    expect(finding(kept("2026-01-01", null))).toBe("The prices of Parcels from 1 Jan 2026 hold today.");
    expect(finding(kept("2026-01-01", "2026-12-31"), kept("2027-01-01", null))).toBe(
      "The prices of Parcels from 1 Jan 2026 hold until 31 Dec 2026; the next card is there.",
    );
  });

  it("says plainly when a card ends with none behind it, also with a gap", () => {
    expect(finding(kept("2026-01-01", "2026-12-31"))).toBe(
      "The prices of Parcels end on 31 Dec 2026, in 36 days, and no card follows: add the one that does.",
    );
    expect(finding(kept("2026-01-01", "2026-11-25"), kept("2026-11-27", null))).toBe(
      "The prices of Parcels end on 25 Nov 2026, today is the last day, and no card follows: add the one that does.",
    );
  });

  it("says plainly when the prices have run out, or do not hold yet", () => {
    expect(finding(kept("2026-01-01", "2026-06-30"))).toBe(
      "The prices of Parcels ran out on 30 Jun 2026. Add the card that holds now.",
    );
    expect(finding(kept("2027-01-01", null))).toBe(
      "No card of Parcels holds today. The next begins on 1 Jan 2027: add what holds until then.",
    );
  });

  it("names another service only where it runs out", () => {
    const main = kept("2026-01-01", null);
    expect(finding(main, kept("2026-01-01", null, "Letters"))).not.toContain("Letters");
    expect(finding(main, kept("2026-01-01", "2026-06-30", "Letters"))).toContain(
      "The prices of Letters ran out on 30 Jun 2026.",
    );
  });
});

describe("the source of a card", () => {
  it("is told with the day on which it was copied, or as not written down", () => {
    expect(sourceWords({ source: "the list of 1 July", readOn: day("2026-07-03") })).toBe(
      "Source: the list of 1 July, copied on 3 Jul 2026.",
    );
    expect(sourceWords({ source: null, readOn: null })).toBe("Source not written down.");
  });
});

describe("the services of a shop", () => {
  it("have the card that holds, those that follow and those that ran out", () => {
    const cards = [
      kept("2027-01-01", null),
      kept("2026-07-01", "2026-12-31"),
      kept("2025-01-01", "2026-06-30"),
    ];
    const [only] = shopServices(cards, today);
    expect([only?.holding?.validFrom, only?.coming.length, only?.past.length]).toEqual(["2026-07-01", 1, 1]);
  });
});
