import { describe, expect, it } from "vitest";
import { cardOn, holdsOn, mainCardOn } from "#lib/postage/card-on";
import { day } from "#lib/units/day";
import { plainCard } from "./rate-card-fixture";

const card = (from: string, to: string | null, service = "tracked") =>
  plainCard({ service, validFrom: day(from), validTo: to === null ? null : day(to) });
const first = card("2026-01-01", "2026-06-30");
const second = card("2026-08-01", null);
const other = card("2026-01-01", null, "letter");
const cards = [second, other, first];

describe("the card of a day", () => {
  it("holds on its first and its last day", () => {
    expect(holdsOn(first, day("2026-01-01"))).toBe(true);
    expect(holdsOn(first, day("2026-06-30"))).toBe(true);
    expect(holdsOn(first, day("2026-07-01"))).toBe(false);
    expect(holdsOn(first, day("2025-12-31"))).toBe(false);
  });

  it("is the one of its service", () => {
    expect(cardOn(cards, "tracked", day("2026-06-30"))).toEqual({ kind: "card", card: first });
    expect(cardOn(cards, "tracked", day("2031-01-01"))).toEqual({ kind: "card", card: second });
  });

  it("is told to be missing between two cards, with the days around the hole", () => {
    expect(cardOn(cards, "tracked", day("2026-07-15"))).toEqual({
      kind: "hole",
      endedOn: "2026-06-30",
      startsOn: "2026-08-01",
    });
    expect(cardOn(cards, "tracked", day("2025-01-01"))).toEqual({
      kind: "hole",
      endedOn: null,
      startsOn: "2026-01-01",
    });
    expect(cardOn(cards, "express", day("2026-07-15"))).toEqual({
      kind: "hole",
      endedOn: null,
      startsOn: null,
    });
  });

  it("is not guessed where two hold", () => {
    const again = card("2026-06-01", "2026-07-31");
    expect(cardOn([...cards, again], "tracked", day("2026-06-15"))).toEqual({
      kind: "overlap",
      cards: [first, again],
    });
  });

  it("of the main service is not stood in for by another one where it has run out", () => {
    const ended = plainCard({ service: "main", validTo: day("2026-06-30") });
    const letters = plainCard({ service: "other" });
    expect(mainCardOn([ended, letters], day("2026-06-30"))).toBe(ended);
    expect(mainCardOn([ended, letters], day("2026-07-01"))).toBeNull();
    expect(mainCardOn([letters, ended], day("2026-07-01"))).toBe(letters);
    expect(mainCardOn([], day("2026-07-01"))).toBeNull();
  });
});
