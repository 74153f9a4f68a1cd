import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cardRows } from "#lib/postage/card-rows/card-rows";
import { readCardRows } from "#lib/postage/card-rows/read-card-rows";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import { day } from "#lib/units/day";
import { plainCard } from "../rate-card-fixture";
import { soundCards } from "./sound-card";

const terms = { measures: "imperial", currency: "USD", zones: null } as const;
const numbered = (rows: readonly (readonly string[])[]) => rows.map((cells, at) => ({ line: at + 1, cells }));

describe("cards as rows", () => {
  it("come back as they were, whatever a sound card says", () => {
    fc.assert(
      fc.property(fc.array(soundCards, { minLength: 1, maxLength: 3 }), (cards) => {
        for (const { card } of cards) {
          expect(rateCardFaults(card).filter(({ severity }) => severity === "error")).toEqual([]);
        }
        const read = readCardRows(numbered(cardRows(cards)), terms);
        if (read.kind === "unreadable") throw new RangeError(JSON.stringify(read.problems));
        expect(read.cards.map(({ line: _, ...card }) => card)).toEqual(cards);
      }),
      { numRuns: 300 },
    );
  });

  it("are a head row with the zones, then each card row by row", () => {
    const card = plainCard({ validTo: day("2026-12-31") });
    expect(cardRows([{ card, source: "invented", readOn: day("2025-12-20") }])).toEqual([
      ["row", "what", "value", "home"],
      ["card", "service", "tracked"],
      ["card", "from", "2026-01-01"],
      ["card", "to", "2026-12-31"],
      ["card", "currency", "EUR"],
      ["card", "source", "invented"],
      ["card", "read on", "2025-12-20"],
      ["step", "up to", "1 kg", "4.00"],
      ["step", "up to", "2 kg", "6.50"],
      ["step", "up to", "5 kg", "11.00"],
    ]);
  });

  it("have a head row of their own where the zones are others", () => {
    const heads = cardRows(
      [["near", "far"], ["near"], ["far", "near"]].map((zones) => ({
        card: plainCard({ zones }),
        source: null,
        readOn: null,
      })),
    ).filter(([kind]) => kind === "row");
    expect(heads).toEqual([
      ["row", "what", "value", "near", "far"],
      ["row", "what", "value", "far", "near"],
    ]);
  });
});
