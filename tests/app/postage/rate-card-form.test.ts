import { describe, expect, it } from "vitest";
import { overlapProblem } from "#app/postage/overlap-problem.ts";
import { postageFinding } from "#app/postage/postage-finding.ts";
import { rateCardForm } from "#app/postage/rate-card-form.ts";
import { day } from "#lib/units/day";
import type { KeptRateCard } from "#prisma/records/rate-cards";
import { SHOP } from "../buying/order-fixture";

const zones = [
  { id: "near", name: "Near", retired: false, position: 0 },
  { id: "far", name: "Far", retired: false, position: 1 },
];
const form = rateCardForm(SHOP, zones);
const typed = { service: "Parcels", validFrom: "2026-01-01", table: "up to  far  Near\n8 oz  5.20  4.60" };

const problemsOf = (changes: Record<string, string>) => {
  const read = form.safeParse({ ...typed, ...changes });
  return read.success ? [] : read.error.issues.map((issue) => `${issue.path.join(".")}: ${issue.message}`);
};

describe("a rate card as typed", () => {
  it("is kept with the zone of each column, whatever the case of its letters", () => {
    expect(form.parse(typed)).toEqual({ ...typed, validTo: null, zoneIds: ["far", "near"] });
    expect(form.parse({ ...typed, validTo: "2026-06-30" }).validTo).toBe("2026-06-30");
  });

  it("names zones that the shop does not have, and those that it has", () => {
    expect(problemsOf({ table: "up to  Moon\n8 oz  5.20" })).toEqual([
      "table: “Moon” is no zone of yours. The zones are Near, Far: rename the column, or add the zone in Setup.",
    ]);
  });

  it("names rows that can't be read, steps out of order and days that contradict", () => {
    expect(problemsOf({ table: "up to  Near\n8 oz  dear" })[0]).toContain(
      "Row 2: “dear” for Near is no price.",
    );
    expect(problemsOf({ table: "up to  Near\n1 lb  6.00\n8 oz  4.60" })).toHaveLength(1);
    expect(problemsOf({ validTo: "2025-12-31" })).toHaveLength(1);
    expect(problemsOf({ service: " " })).toHaveLength(1);
  });
});

describe("rate cards of one service", () => {
  const card: KeptRateCard = { id: "a", ...form.parse(typed) };

  it("may not hold on the same day", () => {
    const other = { ...card, id: "b", validFrom: day("2026-07-01") };
    expect(overlapProblem(other, [card])).toBe(
      "Another card of Parcels holds from 1 Jan 2026 on. Give that one a last day first, or choose other days.",
    );
    expect(overlapProblem(other, [{ ...card, validTo: day("2026-06-30") }])).toBeNull();
    expect(overlapProblem({ ...card, validTo: day("2026-06-30") }, [other])).toBeNull();
    expect(overlapProblem(card, [card])).toBeNull();
    expect(overlapProblem({ ...other, service: "Letters" }, [card])).toBeNull();
  });

  it("say whether one holds today and until when", () => {
    const today = day("2026-11-25");
    expect(postageFinding([], today)).toContain("No prices yet");
    expect(postageFinding([card], today)).toBe("The prices of Parcels hold today.");
    expect(postageFinding([{ ...card, validTo: day("2026-12-31") }], today)).toBe(
      "The prices of Parcels hold today; they end on 31 Dec 2026.",
    );
    expect(postageFinding([{ ...card, validTo: day("2026-06-30") }], today)).toBe(
      "No rate card holds today: add the one that does.",
    );
  });
});
