import { describe, expect, it } from "vitest";
import { supplyForm } from "#app/supplies/supply-form.ts";
import { supplyOfForm } from "#app/supplies/supply-of-form.ts";
import { amountOfUnits } from "#lib/units/amount";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";

const PLACE = { id: "s", position: 3, useFirst: false };

/** Fields with a problem, in the order found. */
function problemFields(typed: Record<string, string>): PropertyKey[] {
  const read = supplyForm("foot", "imperial").safeParse({
    name: "A",
    kind: "bubble",
    useUnit: "foot",
    ...typed,
  });
  return read.success ? [] : read.error.issues.map((issue) => issue.path[0] ?? "");
}

describe("supply form", () => {
  it("needs no more than name, kind and use unit", () => {
    expect(problemFields({})).toEqual([]);
  });

  it.each([
    [{ countUnit: "roll" }, ["countAmount"]],
    [{ countAmount: "175" }, ["countUnit"]],
    [{ pileSheets: "500" }, ["pileHeight"]],
    [{ pileHeight: "1.5 in" }, ["pileSheets"]],
    [{ kind: "carton" }, ["sizes"]],
    [{ kind: "carton", sizes: "12 x 9" }, ["sizes"]],
    [{ kind: "carton", sizes: "12 x 9 x 8" }, []],
    [{ core: "3 in" }, ["full"]],
    [{ core: "3 in", full: "18 in" }, ["full"]],
    [{ core: "3 in", full: "18 in", fullAmount: "175" }, []],
    [{ core: "18 in", full: "18 in", fullAmount: "175" }, ["full"]],
  ])("names the field that has to be filled in for %j", (typed, fields) => {
    expect(problemFields(typed)).toEqual(fields);
  });
});

describe("supply of a filled form", () => {
  const read = (typed: Record<string, string>) =>
    supplyOfForm(
      supplyForm("foot", "imperial").parse({ name: "A", useUnit: "foot", rating: "32 ECT", ...typed }),
      PLACE,
    );
  const roll = { core: "3 in", full: "18 in", fullAmount: "175", coreMass: "4 oz" };
  const pile = { pileSheets: "500", pileHeight: "1.5 in" };

  it("keeps a roll's figures for what is rolled and a pile's for what lies in a pile", () => {
    const bubble = read({ kind: "bubble", ...roll, ...pile });
    expect(bubble).toMatchObject({ coreUm: 76_200, fullUm: 457_200, fullAmount: amountOfUnits(175) });
    expect([bubble.sheetNm, bubble.rating, bubble.wall]).toEqual([null, null, null]);
    const tissue = read({ kind: "tissue", ...roll, ...pile });
    // 1.5 in is 38.1 mm; a five hundredth of it 76,200 nm.
    expect([tissue.coreUm, tissue.fullAmount, tissue.coreMassMg, tissue.sheetNm]).toEqual([
      null,
      null,
      null,
      76_200,
    ]);
    expect(read({ kind: "paper", ...roll, ...pile })).toMatchObject({ coreUm: 76_200, sheetNm: 76_200 });
  });

  it("takes a carton for single wall and keeps its sizes and its rating", () => {
    const carton = read({ kind: "carton", sizes: "12 x 9 x 8", ...roll });
    expect(carton).toMatchObject({
      wall: "single",
      rating: "32 ECT",
      sizesTyped: "12 x 9 x 8",
      coreUm: null,
    });
    expect([carton.lengthUm, carton.widthUm, carton.heightUm]).toEqual([304_800, 228_600, 203_200]);
  });

  it("leaves unknown what was not filled in", () => {
    const plain = { ...PLAIN_SUPPLY, ...PLACE, name: "A", kind: "fill", useUnit: "foot" };
    expect(read({ kind: "fill" })).toEqual(plain);
  });

  it("has a goal of its own, a shelf life and a last day only where they are given", () => {
    const own = { kind: "tape", promise: "share:980", shelfLife: "365", lastUseOn: "2027-01-31" };
    expect(read(own)).toMatchObject({
      goal: "share",
      goalPerMille: 980,
      shelfLifeDays: 365,
      lastUseOn: "2027-01-31",
    });
    expect(read({ kind: "tape" })).toMatchObject({
      goal: null,
      goalPerMille: null,
      shelfLifeDays: null,
      lastUseOn: null,
    });
    expect(problemFields({ promise: "often", shelfLife: "0", lastUseOn: "soon" })).toEqual([
      "promise",
      "shelfLife",
      "lastUseOn",
    ]);
  });
});
