import { describe, expect, it } from "vitest";
import { keptOverlap } from "#app/postage/kept-overlap.ts";
import { overlapProblem } from "#app/postage/overlap-problem.ts";
import { day } from "#lib/units/day";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import { plainCard } from "../../lib/postage/rate-card-fixture";

const keptCard = (id: string, from: string, to: string | null, service = "Parcels"): ReadRateCard => {
  const card = plainCard({ service, validFrom: day(from), validTo: to === null ? null : day(to) });
  return { id, card, source: null, readOn: null, service, validFrom: card.validFrom, validTo: card.validTo };
};
const open = keptCard("a", "2026-01-01", null);

describe("rate cards of one service", () => {
  it("may not hold on the same day", () => {
    const other = keptCard("b", "2026-07-01", null);
    expect(overlapProblem(other, [open])).toBe(
      "Another card of Parcels holds from 1 Jan 2026 on. Give that one a last day first, or choose other days.",
    );
    expect(overlapProblem(other, [keptCard("a", "2026-01-01", "2026-06-30")])).toBeNull();
    expect(overlapProblem(keptCard("a", "2026-01-01", "2026-06-30"), [other])).toBeNull();
    expect(overlapProblem(open, [open])).toBeNull();
    expect(overlapProblem({ ...other, service: "Letters" }, [open])).toBeNull();
  });

  it("end on the day before the next one begins, where that is wanted", () => {
    const next = keptCard("b", "2027-01-01", null);
    expect(keptOverlap(next, [open], false)).toMatchObject({ kind: "overlap", canEnd: true });
    const ended = keptOverlap(next, [open], true);
    expect(ended).toMatchObject({ kind: "free", ended: [{ id: "a", card: { validTo: "2026-12-31" } }] });
  });

  it("are not ended where more than that is in the way", () => {
    const next = keptCard("b", "2025-06-01", null);
    expect(keptOverlap(next, [open], true)).toMatchObject({ kind: "overlap", canEnd: false });
    const both = [open, keptCard("c", "2027-03-01", "2027-04-30")];
    expect(keptOverlap(keptCard("b", "2027-01-01", null), both, true)).toMatchObject({
      kind: "overlap",
      canEnd: false,
    });
    expect(keptOverlap(keptCard("a", "2026-01-01", null), [open], false)).toEqual({
      kind: "free",
      ended: [],
    });
  });
});
