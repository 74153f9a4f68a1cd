import { describe, expect, it } from "vitest";
import { cartonMass } from "#lib/packing/carton-mass";
import { cartonTape } from "#lib/packing/carton-tape";
import { packedMass } from "#lib/packing/packed-mass";
import { amountLeftOnRoll } from "#lib/packing/part-roll";
import { pileByHeight } from "#lib/packing/pile-by-height";
import { pileByWeight } from "#lib/packing/pile-by-weight";
import { rollByWeight } from "#lib/packing/roll-by-weight";
import { gramsPerSquareMetre, sheetMass } from "#lib/packing/sheet-mass";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { MICROMETRES_PER_FOOT, MICROMETRES_PER_INCH } from "#lib/units/length";
import { MILLIGRAMS_PER_POUND } from "#lib/units/mass";

const inches = (count: number) => Math.round(count * MICROMETRES_PER_INCH);
const pounds = (count: number) => Math.round(count * MILLIGRAMS_PER_POUND);

const newsprint = (lengthInches: number, widthInches: number) =>
  sheetMass({
    lengthUm: inches(lengthInches),
    widthUm: inches(widthInches),
    gramsPerSquareMetre: gramsPerSquareMetre(30),
  });

describe("grammage from a basis weight", () => {
  // Paper maker's formula and example: https://shop.sylvamo.com/en/resources/calculator/basisweight
  it("is 105.3 g/m² for 28 lb bond", () => {
    expect(Math.abs(gramsPerSquareMetre(28, [17, 22]) - 105.3)).toBeLessThanOrEqual(0.05);
  });

  // Printer's conversion factors, published in whole grams: http://www.timesprinters.com/tradoc1/papersize/papersize4.htm
  it("is 135 g/m² for 50 lb cover and 74 g/m² for 50 lb text", () => {
    expect(Math.abs(gramsPerSquareMetre(50, [20, 26]) - 135)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(gramsPerSquareMetre(50, [25, 38]) - 74)).toBeLessThanOrEqual(0.5);
  });

  // Crepe paper maker's conversions, published to the nearest gram: https://ivexsp.com/basis-weight-metric-conversions/
  it("is 120 g/m² for 74 lb crepe", () => {
    expect(Math.abs(gramsPerSquareMetre(74) - 120)).toBeLessThanOrEqual(0.6);
  });

  // A ream of 278.70912 m²: http://www.onlineconversion.com/forum/forum_1109746139.htm
  it.each([
    [1, 1.6275, 0.001],
    [30, 48.82, 0.1],
    [40, 65.1, 0.1],
    [49.16, 80, 0.1],
  ])("of %s lb packing paper is %s g/m²", (basis, grams, tolerance) => {
    expect(Math.abs(gramsPerSquareMetre(basis) - grams)).toBeLessThanOrEqual(tolerance);
  });
});

describe("the mass of a sheet", () => {
  // Published examples: 1,000 sheets of 36 x 48 in at 50 lb weigh 200 lb; 1,275 ft of a 36 in roll at 40 lb weigh 51 lb.
  // Paper converter's sheet and roll formulae: http://paperconverter.com/7783.html
  it("is 1/1000 of 200 lb for 36 x 48 in at 50 lb", () => {
    const sheet = { lengthUm: inches(48), widthUm: inches(36), gramsPerSquareMetre: gramsPerSquareMetre(50) };
    expect(Math.abs((sheetMass(sheet) * 1000) / MILLIGRAMS_PER_POUND - 200)).toBeLessThanOrEqual(0.01);
  });

  it("is 51 lb for a roll 36 in wide and 1,275 ft long at 40 lb", () => {
    const roll = {
      lengthUm: 1275 * MICROMETRES_PER_FOOT,
      widthUm: inches(36),
      gramsPerSquareMetre: gramsPerSquareMetre(40),
    };
    expect(Math.abs(sheetMass(roll) / MILLIGRAMS_PER_POUND - 51)).toBeLessThanOrEqual(0.01);
  });

  // By the rule of the same page.
  it("is 27.22 g for 24 x 36 in and 18.14 g for 24 x 24 in at 30 lb", () => {
    expect(Math.abs(newsprint(24, 36) / 1000 - 27.22)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(newsprint(24, 24) / 1000 - 18.14)).toBeLessThanOrEqual(0.05);
  });

  // Metric area by the inch of 25.4 mm: http://www.onlineconversion.com/forum/forum_1109746139.htm
  it("is 27.87 g for 24 x 36 in at 50 g/m² and 6.58 g for tissue of 20 x 30 in at 17 g/m²", () => {
    const paper = sheetMass({ lengthUm: inches(36), widthUm: inches(24), gramsPerSquareMetre: 50 });
    const tissue = sheetMass({ lengthUm: inches(30), widthUm: inches(20), gramsPerSquareMetre: 17 });
    expect(Math.abs(paper / 1000 - 27.87)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(tissue / 1000 - 6.58)).toBeLessThanOrEqual(0.02);
  });
});

describe("sheets from a weight", () => {
  /** Masses are stored to the milligram: half of one, for each sheet and for the pile, is added before cutting down. */
  const wholeSheets = (grossMg: number, massMg: number) => {
    const sheets = unitsOf(pileByWeight({ grossMg, wrapperMg: 0, massMg }));
    return Math.floor(sheets + ((sheets + 1) * 0.5) / massMg);
  };

  // Rule of the paper converter's sheet formula: http://paperconverter.com/7783.html
  it("are 416 of 24 x 36 in in a bundle of 25 lb, and 250 of 24 x 24 in in one of 10 lb", () => {
    expect(wholeSheets(pounds(25), newsprint(24, 36))).toBe(416);
    expect(wholeSheets(pounds(10), newsprint(24, 24))).toBe(250);
  });

  // Computed from the formula.
  it("are 500 of 24 x 30 in and 625 of 24 x 24 in in a bundle of 25 lb, and 233 of 24 x 36 in in 6.35 kg", () => {
    expect(wholeSheets(pounds(25), newsprint(24, 30))).toBe(500);
    expect(wholeSheets(pounds(25), newsprint(24, 24))).toBe(625);
    expect(wholeSheets(6_350_000, newsprint(24, 36))).toBe(233);
  });

  // Computed from the formula.
  it("are 546 of 50 x 75 cm in 10 kg", () => {
    const sheet = { lengthUm: 750_000, widthUm: 500_000, gramsPerSquareMetre: gramsPerSquareMetre(30) };
    expect(wholeSheets(10_000_000, sheetMass(sheet))).toBe(546);
  });
});

describe("sheets from a height", () => {
  // A home mover measured a ream of 500 sheets at 1.5 in (2014): one person's reading, no address.
  it("are 500 in 1.5 in and 300 in 0.9 in of newsprint", () => {
    const sheetNm = (inches(1.5) * 1000) / 500;
    expect(unitsOf(pileByHeight({ heightUm: inches(1.5), sheetNm }))).toBe(500);
    expect(unitsOf(pileByHeight({ heightUm: inches(0.9), sheetNm }))).toBe(300);
  });
});

describe("what is left on a part roll", () => {
  // Length of a wound strip, π/4 (outer² - core²) / thickness: mathforum.org, library, drmath 67031 (2003).
  // The roll sizes are from memory; the lengths are computed from the formula.
  const bubble = { coreUm: inches(3), fullUm: inches(18.5), fullAmount: amountOfUnits(175) };

  it.each([
    [16, 130],
    [14, 98],
    [12, 71],
    [10, 48],
    [8, 29],
    [6, 14],
  ])("at %s in across is %s ft of 175 ft of small bubble", (outer, feet) => {
    expect(Math.round(unitsOf(amountLeftOnRoll({ ...bubble, outerUm: inches(outer) })))).toBe(feet);
  });

  it("is half the length at 13.3 in across, and 23 % at half the diameter", () => {
    const shareAt = (outer: number) => unitsOf(amountLeftOnRoll({ ...bubble, outerUm: inches(outer) })) / 175;
    expect(shareAt(13.3)).toBeCloseTo(0.5, 2);
    expect(shareAt(9.25)).toBeCloseTo(0.23, 2);
  });

  it("lies between 69 and 72 ft where 12 in is misread by an eighth", () => {
    const feetAt = (outer: number) => unitsOf(amountLeftOnRoll({ ...bubble, outerUm: inches(outer) }));
    expect([Math.round(feetAt(11.875)), Math.round(feetAt(12.125))]).toEqual([69, 72]);
  });

  it.each([
    [4.2, 87],
    [4.0, 70],
    [3.8, 53],
    [3.6, 36],
    [3.4, 21],
    [3.2, 7],
  ])("at %s in across is %s yd of 110 yd of carton tape", (outer, yards) => {
    const tape = { coreUm: inches(3.1), fullUm: inches(4.44), fullAmount: amountOfUnits(330) };
    expect(Math.round(unitsOf(amountLeftOnRoll({ ...tape, outerUm: inches(outer) })) / 3)).toBe(yards);
  });

  it("at 400 mm across is 38.7 m of a metric roll of 100 m", () => {
    const roll = { outerUm: 400_000, coreUm: 50_000, fullUm: 640_000, fullAmount: amountOfUnits(100) };
    expect(unitsOf(amountLeftOnRoll(roll))).toBeCloseTo(38.7, 1);
  });

  // Computed from the formula; 50 g/m² for small bubble is from memory.
  it("in 600 g of small bubble 12 in wide is 129 ft, or 39.4 m", () => {
    const massMg = sheetMass({ lengthUm: inches(12), widthUm: inches(12), gramsPerSquareMetre: 50 });
    const feet = unitsOf(rollByWeight({ grossMg: 600_000, coreMg: 0, massMg }));
    expect([Math.round(feet), Number((feet * 0.3048).toFixed(1))]).toEqual([129, 39.4]);
  });
});

describe("tape to close a carton", () => {
  // One strip is top + bottom + 11 in, with legs of 2.75 in: http://ipcinc.com/much-tape-needed-close-box/
  // The rest is computed from the formula; legs of 2 in at the edges are common practice, no source.
  it.each([
    [8, "single", 27, 146],
    [8, "doubled-bottom", 40.5, 97],
    [8, "h", 75, 52],
    [12, "single", 35, 113],
    [12, "doubled-bottom", 52.5, 75],
    [12, "h", 99, 40],
    [18, "single", 47, 84],
    [18, "doubled-bottom", 70.5, 56],
    [18, "h", 135, 29],
  ] as const)(
    "of %s in square, %s, is %s in: %s cartons to a roll of 110 yd",
    (side, pattern, length, cartons) => {
      const tape = cartonTape({ lengthUm: inches(side), widthUm: inches(side), pattern });
      expect(tape).toBe(inches(length));
      expect(Math.floor(inches(110 * 36) / tape)).toBe(cartons);
    },
  );
});

describe("the guessed mass of a carton", () => {
  // Blank by a board maker's formula; the board weight of 0.115 lb a square foot is from memory.
  it.each([
    [8, 197],
    [10, 304],
    [12, 435],
    [14, 588],
    [16, 765],
  ])("that is a cube of %s in is %s g", (side, grams) => {
    const um = inches(side);
    expect(Math.round(cartonMass({ lengthUm: um, widthUm: um, heightUm: um }) / 1000)).toBe(grams);
  });
});

describe("the mass of a packed parcel", () => {
  // Computed from sizes and grammages; the recipes and the masses of bubble, tape and board are from memory.
  const squareFootOf = (grams: number) =>
    sheetMass({ lengthUm: inches(12), widthUm: inches(12), gramsPerSquareMetre: grams });
  const supplyMasses = new Map<string, number>([
    ["tissue", sheetMass({ lengthUm: inches(30), widthUm: inches(20), gramsPerSquareMetre: 17 })],
    ["newsprint", newsprint(24, 36)],
    ["small-bubble", squareFootOf(50)],
    ["large-bubble", squareFootOf(85)],
    ["tape-inch", Math.round((2_300 * MICROMETRES_PER_INCH) / 1_000_000)],
  ]);

  it.each([
    ["single mug", 370, [8, 8, 8], [1, 7, 4, 0, 75], 797],
    ["stemmed glass", 180, [8, 8, 12], [1.5, 10, 5, 0, 75], 746],
    ["vase", 1200, [12, 12, 14], [2, 27, 3, 6, 99], 2496],
  ] as const)(
    "of a %s comes to the gram",
    (itemTypeId, bareGrams, [length, width, height], amounts, grams) => {
      const [tissue, paper, small, large, tape] = amounts;
      const carton = { lengthUm: inches(length), widthUm: inches(width), heightUm: inches(height) };
      const papers = { itemTypeId: "papers", pieces: 1, massMg: 10_000 };
      const parcel = {
        pieces: [{ itemTypeId, pieces: 1, massMg: bareGrams * 1000 }, papers],
        lines: [
          { supplyId: "tissue", amount: amountOfUnits(tissue) },
          { supplyId: "newsprint", amount: amountOfUnits(paper) },
          { supplyId: "small-bubble", amount: amountOfUnits(small) },
          { supplyId: "large-bubble", amount: amountOfUnits(large) },
          { supplyId: "tape-inch", amount: amountOfUnits(tape) },
        ],
        cartons: ["carton"],
        supplyMasses: new Map([...supplyMasses, ["carton", cartonMass(carton)]]),
      };
      const { mg, unknown } = packedMass(parcel);
      expect(unknown).toEqual([]);
      expect(Math.round(mg / 1000)).toBe(grams);
    },
  );
});
