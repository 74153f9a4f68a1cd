import { describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { forecastInputs, forecastSpan } from "#prisma/records/forecast-inputs";
import type { ForecastRows } from "#prisma/records/forecast-rows";
import { FIRST_MONDAY, packed, recipe, rows, TODAY } from "./forecast-rows-fixture";

const inputsOf = (changes: Partial<ForecastRows> = {}, today = TODAY) => {
  const all = rows(changes);
  const span = forecastSpan(all, today);
  const { history, supplies } = forecastInputs(all, span, today);
  const [paper] = supplies;
  const [mug] = history.itemTypes;
  if (paper === undefined || mug === undefined) throw new TypeError("the rows have paper and mugs");
  return { span, history, paper, mug };
};
const twelve = (value: number) => new Array<number>(12).fill(value);

describe("how far a forecast looks back", () => {
  it("is to the start of the running week, which is not over", () => {
    const { span } = inputsOf();
    expect(span.until).toBe("2026-11-23");
    expect(span.weeks.length).toBe(12);
    expect(span.weeks[0]?.weekStart).toBe(FIRST_MONDAY);
  });

  it("is up to and with today while no whole week is over", () => {
    expect(forecastSpan(rows({ firstDay: day("2026-11-19") }), TODAY)).toEqual({
      until: "2026-11-26",
      weeks: [],
    });
  });

  it("leaves the first week out where the records begin within it", () => {
    const { weeks } = forecastSpan(rows({ firstDay: addDays(FIRST_MONDAY, 2) }), TODAY);
    expect(weeks[0]?.weekStart).toBe(addDays(FIRST_MONDAY, 7));
  });
});

describe("what a forecast is made from", () => {
  it("is parcels and pieces of each week", () => {
    const { mug } = inputsOf();
    expect(mug.parcels).toEqual(twelve(2));
    expect(mug.pieces).toEqual(twelve(3));
    expect(mug.massGrams).toBe(400);
    // 60 / 36: a piece goes with 1.67 on average, seen from a piece.
    expect(mug.piecesAtOnce).toBeCloseTo(60 / 36, 12);
  });

  it("is the use of each week, and what today's recipe takes for a piece", () => {
    const { paper } = inputsOf();
    expect(paper.recorded).toEqual(twelve(30));
    expect(paper.history.used).toEqual(twelve(30));
    expect([...paper.history.perPiece]).toEqual([["mug", 10]]);
    // 10 sheets a piece, 1.5 pieces a parcel with a mean square of 2.5: 100 × 2.5 / (10 × 1.5).
    expect(paper.history.perUse).toBeCloseTo(250 / 15, 12);
  });

  it("looks as far ahead as the quicker delivery and the next check: 16 days are 2 weeks", () => {
    expect(inputsOf().paper.history.horizonWeeks).toBe(2);
  });

  it("takes a past with a former recipe as if it had been packed by today's", () => {
    const recipes = [
      recipe("first", { piece: { paper: 10 } }),
      recipe("second", { piece: { paper: 4, bubble: 6 }, from: "2026-11-16" }),
    ];
    const bubble = {
      id: "bubble",
      unit: "square-foot",
      useByDay: [],
      countDifferences: [],
      leadTimesDays: [],
    } as const;
    const all = rows({ recipes, supplies: [...rows().supplies, bubble] });
    const { supplies } = forecastInputs(all, forecastSpan(all, TODAY), TODAY);
    // 3 pieces a week: 18 sheets less, 18 square feet more; the last week was packed by the second recipe already.
    expect(supplies[0]?.history.used).toEqual([...new Array<number>(11).fill(12), 30]);
    expect(supplies[1]?.history.used).toEqual([...new Array<number>(11).fill(18), 0]);
    expect(supplies[0]?.recorded).toEqual(twelve(30));
  });

  it("never takes a use below nothing", () => {
    const recipes = [
      recipe("first", { piece: { paper: 20 } }),
      recipe("second", { piece: { paper: 1 }, from: "2026-11-23" }),
    ];
    expect(inputsOf({ recipes }).paper.history.used).toEqual(twelve(0));
  });

  it("takes a past in a style that was given up as if it had been packed as lately", () => {
    const recipes = [
      recipe("paper", { piece: { paper: 10 } }),
      recipe("bubble", { style: "bubble", piece: { paper: 2 } }),
    ];
    const lately = rows().packed.map((row, week) => ({ ...row, style: week < 3 ? "paper" : "bubble" }));
    const { paper } = inputsOf({ recipes, packed: lately });
    expect(paper.history.used.slice(0, 4)).toEqual([6, 6, 6, 30]);
    expect([...paper.history.perPiece]).toEqual([["mug", 2]]);
  });

  it("raises the use by what two counts found missing", () => {
    const [paper] = rows().supplies;
    if (paper === undefined) throw new TypeError("the rows have paper");
    const missing = [8, 10].map((week) => ({
      day: addDays(FIRST_MONDAY, 7 * week),
      amount: amountOfUnits(-18),
    }));
    const { history, correction } = inputsOf({ supplies: [{ ...paper, countDifferences: missing }] }).paper;
    // 360 sheets are recorded, and 36 were missing besides.
    expect(correction).toMatchObject({ kind: "corrected", factor: 1.1 });
    for (const used of history.used) expect(used).toBeCloseTo(33, 9);
  });

  it("is what was packed since the first day while no week is over", () => {
    const first = day("2026-11-23");
    const { history, paper, mug } = inputsOf({
      firstDay: first,
      packed: [packed(first), packed(addDays(first, 2))],
      supplies: rows().supplies.map((supply) => ({
        ...supply,
        useByDay: [{ day: first, amount: amountOfUnits(60) }],
      })),
    });
    expect(history.firstDays).toBe(3);
    expect(mug.firstDays).toEqual({ parcels: 4, pieces: 6 });
    expect(paper.history.firstDaysUsed).toBe(60);
  });

  it("leaves out an item type that was never packed and has no recipe", () => {
    const itemTypes = [...rows().itemTypes, { id: "vase", massMg: null }];
    expect(inputsOf({ itemTypes }).history.itemTypes.map(({ id }) => id)).toEqual(["mug"]);
  });
});
