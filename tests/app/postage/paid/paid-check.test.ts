import { describe, expect, it } from "vitest";
import { outsideSize } from "#app/postage/outside-size.ts";
import { NOT_TOLD_WORDS, paidCheck, reasonWords } from "#app/postage/paid/paid-check.ts";
import { paidFinding } from "#app/postage/paid/paid-finding.ts";
import type { RateCard } from "#lib/postage/rate-card";
import type { PaidRow } from "#prisma/records/paid-parcels";
import { plainBand, plainCard, stepUpTo, typed } from "../../../lib/postage/rate-card-fixture";

const GRAM = 1_000;
const card = plainCard({
  service: "Parcels",
  zones: ["near", "far"],
  bands: [plainBand([stepUpTo("1", "kg", [400, 500]), stepUpTo("2", "kg", [650, 900])])],
});
const ground = { cartons: [], bulgeUm: 0, boardPoundsPerSquareFoot: 0.13 };
let count = 0;
function paid(grams: number | null, postageMinor: number, change: Partial<PaidRow> = {}): PaidRow {
  count += 1;
  return {
    id: `p${count}`,
    packedOn: "2026-11-20",
    postedOn: null,
    zoneId: "near",
    scaleMg: grams === null ? null : grams * GRAM,
    scaleTyped: grams === null ? null : `${grams} g`,
    postageMinor,
    pieces: [{ itemTypeId: "mug", name: "Mug", pieces: 1, recipeId: null }],
    carton: null,
    ...change,
  };
}
const check = (rows: readonly PaidRow[], cards: readonly RateCard[] = [card]) =>
  paidCheck(rows, { ...ground, cards, services: ["Parcels"], measures: "metric" });
const shop = { currency: "EUR", minorDigits: 2 };

describe("the check of what was paid", () => {
  it("sums what cost more and less, the largest difference first, and counts what agrees and what can't be told", () => {
    const rows = [
      paid(900, 400),
      paid(900, 500),
      paid(900, 650),
      paid(1500, 400),
      paid(null, 400),
      paid(900, 400, { zoneId: null }),
    ];
    const { over, overMinor, under, underMinor, agrees, notTold } = check(rows);
    expect(over.map(({ verdict }) => (verdict.kind === "over" ? verdict.byMinor : 0))).toEqual([250, 100]);
    expect([overMinor, under.length, underMinor, agrees]).toEqual([350, 1, 250, 1]);
    expect([...notTold]).toEqual([
      ["noWeight", 1],
      ["noZone", 1],
    ]);
  });

  it("says the likely reason, and that a finer scale may read more at a limit", () => {
    const reasons = check([paid(900, 500), paid(700, 650), paid(1000, 650), paid(900, 444)]).over.map(
      ({ verdict }) => (verdict.kind === "over" ? reasonWords(verdict, (zone) => zone.toUpperCase()) : ""),
    );
    expect(reasons.toSorted()).toEqual([
      "As for up to 2 kg: one step heavier.",
      "As for up to 2 kg: one step heavier. It stood at the limit: a finer scale may read more.",
      "As for zone FAR.",
      "Nothing on the card explains it.",
    ]);
  });

  it("sums what steps missed by a little cost, whatever was paid", () => {
    const { missed, missedMinor } = check([
      paid(1020, 650),
      paid(1030, 700),
      paid(1031, 650),
      paid(990, 400),
    ]);
    expect(missed.map(({ overMg, minor }) => [Math.round(overMg / GRAM), minor])).toEqual([
      [20, 250],
      [30, 250],
    ]);
    expect(missedMinor).toBe(500);
  });

  it("takes the card of the day posted, else packed", () => {
    const before = plainCard({ ...card, validTo: card.validFrom });
    const rows = [
      paid(900, 400, { packedOn: card.validFrom }),
      paid(900, 400, { packedOn: card.validFrom, postedOn: "2026-01-02" }),
    ];
    const { agrees, notTold } = check(rows, [before]);
    expect([agrees, notTold.get("noCard")]).toEqual([1, 1]);
  });

  it("is told in one sentence", () => {
    expect(paidFinding(check([]), shop)).toBe("No parcel of the last 90 days has its postage written down.");
    expect(paidFinding(check([paid(null, 1)]), shop)).toContain("can't be held against a card");
    expect(paidFinding(check([paid(900, 400)]), shop)).toBe(
      "What was paid agrees with your cards: all 1 parcels that can be told.",
    );
    expect(paidFinding(check([paid(900, 400), paid(900, 399)]), shop)).toBe(
      "No parcel cost more than your cards say; 1 of 2 cost less.",
    );
    expect(paidFinding(check([paid(900, 400), paid(900, 650)]), shop)).toBe(
      "1 parcel of 2 cost more than your cards say: €2.50 in all.",
    );
    expect(Object.values(NOT_TOLD_WORDS).every((words) => words.length > 10)).toBe(true);
  });

  it("needs a size where the card counts it", () => {
    const walls = { longest: typed("60", "cm"), lengthAndGirth: null, sides: null, weight: null };
    const sizedCard = { ...card, bands: card.bands.map((band) => ({ ...band, walls })) };
    const odd = { supplyId: null, sizesUm: [300_000, 200_000, 100_000], cutHeightUm: null } as const;
    const { agrees, notTold } = check([paid(900, 400), paid(900, 400, { carton: odd })], [sizedCard]);
    expect([agrees, notTold.get("noSize")]).toEqual([1, 1]);
  });
});

describe("the outside of a carton", () => {
  it("of an odd one is its inside with the usual board, and is not known without sizes", () => {
    const size = outsideSize(
      { supplyId: null, sizesUm: [300_000, 200_000, 100_000], cutHeightUm: null },
      ground,
    );
    expect(size?.um.every((side, at) => side > ([300_000, 200_000, 100_000][at] ?? 0))).toBe(true);
    expect(outsideSize(null, ground)).toBeNull();
    expect(outsideSize({ supplyId: "gone", sizesUm: null, cutHeightUm: null }, ground)).toBeNull();
  });
});
