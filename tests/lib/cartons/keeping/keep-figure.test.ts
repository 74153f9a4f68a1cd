import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type KeepQuestion, keepFigure } from "#lib/cartons/keeping/keep-figure";

// The rule's figures are held in tests/reference; prices here are invented.
const question: KeepQuestion = {
  onHand: 100,
  yearlyUse: 12,
  watchedDays: 365,
  unitCost: 90,
  salvage: 0,
  orderCost: 500,
  lot: 25,
  holdingRate: 0.2,
};

describe("keepFigure", () => {
  it("keeps all that is used while holding it pays", () => {
    expect(keepFigure({ ...question, onHand: 50 })).toMatchObject({
      kind: "keep",
      keep: 50,
      letGo: 0,
      reason: "usedInTime",
    });
  });

  it("lets go of what is more than pays, in whole cartons that add up", () => {
    const figure = keepFigure({ ...question, onHand: 100 });
    // (90 + 500/25) / (90 × 0.2) + 25 / 24 = 7.1528 years; times 12 = 85.83 cartons.
    expect(figure).toMatchObject({ kind: "letGo", keep: 85, letGo: 15, reason: "moreThanPays" });
    expect(figure.kind === "letGo" ? figure.keepYears : null).toBeCloseTo(7.1528, 4);
  });

  it("says why there is no figure", () => {
    const reasonOf = (change: Partial<KeepQuestion>) => keepFigure({ ...question, ...change });
    expect(reasonOf({ onHand: null })).toEqual({ kind: "none", reason: "countFirst" });
    expect(reasonOf({ onHand: -2 })).toEqual({ kind: "none", reason: "countFirst" });
    expect(reasonOf({ onHand: 0 })).toEqual({ kind: "none", reason: "nothingHeld" });
    expect(reasonOf({ watchedDays: 90 })).toEqual({ kind: "none", reason: "watchedTooShort" });
    expect(reasonOf({ unitCost: null })).toEqual({ kind: "none", reason: "priceUnknown" });
  });

  it("keeps nothing for its money that a year did not use, even if its price is unknown", () => {
    expect(keepFigure({ ...question, yearlyUse: 0, unitCost: null })).toEqual({
      kind: "letGo",
      keep: 0,
      letGo: 100,
      keepYears: null,
      reason: "notUsed",
    });
  });

  it("keeps what is free as far as money goes, unless it brings something", () => {
    expect(keepFigure({ ...question, unitCost: 0 })).toMatchObject({ kind: "keep", reason: "costsNothing" });
    expect(keepFigure({ ...question, unitCost: 0, salvage: 5 })).toMatchObject({
      kind: "letGo",
      letGo: 100,
      reason: "worthMoreGone",
    });
  });

  it("says so where a carton brings more than its price", () => {
    expect(keepFigure({ ...question, salvage: 95 })).toMatchObject({ reason: "worthMoreGone" });
  });

  it("splits what is held, and never keeps less where more is used", () => {
    const held = fc.integer({ min: 1, max: 500 });
    const used = fc.integer({ min: 0, max: 1000 });
    fc.assert(
      fc.property(held, used, used, (onHand, yearlyUse, more) => {
        const kept = (use: number) => {
          const figure = keepFigure({ ...question, onHand, yearlyUse: use });
          if (figure.kind === "none") throw new RangeError(`kept requires a figure, got ${figure.reason}`);
          expect(figure.keep + figure.letGo).toBe(onHand);
          return figure.keep;
        };
        expect(kept(yearlyUse + more)).toBeGreaterThanOrEqual(kept(yearlyUse));
      }),
    );
  });
});
