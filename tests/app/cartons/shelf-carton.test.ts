import { describe, expect, it } from "vitest";
import type { ShelfTerms } from "#app/cartons/shelf-carton.ts";
import { addDays, day } from "#lib/units/day";
import { CENT } from "../../lib/cartons/choice/mug-bench";
import { cartonSupply, counted, onShelf, TODAY } from "./small-shelf";

const shelved = (terms: Partial<ShelfTerms> = {}) => onShelf(cartonSupply("cube-12", [12, 12, 12]), terms);
const used = (...days: readonly (readonly [daysAgo: number, cartons: number])[]) => ({
  useDays: new Map([
    ["cube-12", days.map(([ago, cartons]) => ({ day: addDays(TODAY, -ago), cartons }))],
    ["another", [{ day: TODAY, cartons: 99 }]],
  ]),
});
const stockOf = (cartons: number, unitCost: number | null = null) => ({
  stock: new Map([["cube-12", counted("cube-12", cartons, unitCost)]]),
});

describe("a carton on the shelf", () => {
  it("has its use in twelve months, the latest last", () => {
    const { months, idle } = shelved(used([0, 2], [29, 1], [31, 4], [364, 5]));
    // A twelfth of a year is 30.4 days.
    expect(months).toEqual([5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 4, 3]);
    expect([idle.use.in30Days, idle.use.in365Days]).toEqual([3, 12]);
  });

  it("knows nothing of months before the records begin", () => {
    const { months } = shelved({ ...used([10, 3]), watchedFrom: addDays(TODAY, -40) });
    expect(months).toEqual([...Array.from({ length: 10 }, () => null), 0, 3]);
  });

  it("takes back what came back in its month", () => {
    expect(shelved(used([3, 4], [2, -1])).months.at(-1)).toBe(3);
  });

  it("was never counted where the ledger has no count, though it has use", () => {
    const uncounted = { ...counted("cube-12", -3), countedAt: null };
    for (const stock of [new Map(), new Map([["cube-12", uncounted]])]) {
      const { onHand, idle } = shelved({ ...used([5, 3]), stock });
      expect(onHand).toBeNull();
      expect([idle.monthsOfCover, idle.money, idle.roomMl]).toEqual([null, null, null]);
      expect(idle.figure).toEqual({ kind: "none", reason: "countFirst" });
    }
  });

  it("has the price of today, else its cost in the books, else none", () => {
    const replacement = new Map([["cube-12", 150 * CENT]]);
    expect(shelved({ ...stockOf(4, 120 * CENT), replacement })).toMatchObject({ value: 150 * CENT });
    expect(shelved({ ...stockOf(4, 120 * CENT), replacement }).idle.money).toBe(600 * CENT);
    const noPrice = new Map([["cube-12", null]]);
    expect(shelved({ ...stockOf(4, 120 * CENT), replacement: noPrice }).value).toBe(120 * CENT);
    expect(shelved(stockOf(4))).toMatchObject({ value: null, onHand: 4 });
    expect(shelved(stockOf(4)).idle.money).toBeNull();
  });

  it("takes the room of its blank folded once with air between", () => {
    // 8 1/3 sq ft are 0.7742 sq m; twice 4 mm is in the fold of half the area: 0.7742 × 4 mm × 1.2 = 3.716 l
    expect((shelved(stockOf(1)).idle.roomMl ?? 0) / 1000).toBeCloseTo(3.716, 2);
    expect((shelved(stockOf(10)).idle.roomMl ?? 0) / 1000).toBeCloseTo(37.16, 1);
  });

  it("lasts as long as its use of 13 weeks says, with what is on order", () => {
    // 26 in 91 days are 2 a week: 52 last 26 weeks, half a year
    const terms = { ...used([1, 13], [60, 13]), ...stockOf(52) };
    expect(shelved(terms).idle.monthsOfCover).toBeCloseTo(6, 1);
    expect(shelved({ ...terms, onOrder: new Map([["cube-12", 52]]) }).idle.monthsOfCover).toBeCloseTo(12, 1);
  });

  it("sits where it was not used for half a year, moves where it was used this week, is new where just bought", () => {
    expect(shelved({ ...used([200, 1]), ...stockOf(5) }).idle.ageing).toBe("sits");
    expect(shelved({ ...used([70, 1]), ...stockOf(5) }).idle.ageing).toBe("slow");
    expect(shelved({ ...used([2, 5]), ...stockOf(5) }).idle.ageing).toBe("moves");
    expect(shelved({ ...stockOf(5), watchedFrom: day("2026-03-20") }).idle.ageing).toBe("tooNew");
  });

  it("keeps what is used before keeping it costs more than buying it again", () => {
    const terms = {
      ...used([10, 20], [200, 30]),
      ...stockOf(5_000),
      replacement: new Map([["cube-12", 100 * CENT]]),
    };
    const { figure } = shelved(terms).idle;
    if (figure.kind !== "letGo") throw new Error(JSON.stringify(figure));
    expect(figure.keep + figure.letGo).toBe(5_000);
    // A dollar at 20 % a year is a dollar of holding after 5 years; 50 a year use 250 in them, and an order of 5 dollars
    // saved for each lot adds some.
    expect(figure.keep).toBeGreaterThanOrEqual(250);
    expect(figure.keep).toBeLessThan(500);
  });
});
