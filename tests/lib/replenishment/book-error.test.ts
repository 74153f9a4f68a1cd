import { describe, expect, it } from "vitest";
import { bookError } from "#lib/replenishment/book-error";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const useByDay = [
  { day: day("2026-11-18"), amount: amountOfUnits(40) },
  { day: day("2026-11-20"), amount: amountOfUnits(30) },
  { day: day("2026-11-23"), amount: amountOfUnits(20) },
];
const countedOn = day("2026-11-18");
const today = day("2026-11-25");

describe("how far the book may be off", () => {
  it("is a tenth of what was used since the count, as a guess", () => {
    expect(bookError({ useByDay, countedOn }, { kind: "none" }, today)).toBe(amountOfUnits(5));
  });

  it("is the share that counts found, a twentieth at least", () => {
    const found = (units: number) =>
      ({
        kind: "corrected",
        factor: 1.2,
        differences: 3,
        differenceSum: -amountOfUnits(units),
        recordedUse: amountOfUnits(100),
      }) as const;
    expect(bookError({ useByDay, countedOn }, found(20), today)).toBe(amountOfUnits(10));
    expect(bookError({ useByDay, countedOn }, found(1), today)).toBe(amountOfUnits(2.5));
  });

  it("is nothing where nothing was used since", () => {
    expect(bookError({ useByDay, countedOn: day("2026-11-24") }, { kind: "none" }, today)).toBe(0);
  });
});
