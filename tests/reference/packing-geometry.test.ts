import { describe, expect, it } from "vitest";
import { blockVolume } from "#lib/packing/block";
import { cartonBlank } from "#lib/packing/carton-blank";
import { cartonMass } from "#lib/packing/carton-mass";
import { cartonOutside } from "#lib/packing/carton-outside";
import { cartonTape } from "#lib/packing/carton-tape";
import { boxInBox } from "#lib/packing/fill/box-in-box";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import { USUAL_HABITS } from "#lib/packing/habits";
import { amountLeftOnRoll } from "#lib/packing/part-roll";
import { gramsPerSquareMetre, sheetMass } from "#lib/packing/sheet-mass";
import { flatWrap } from "#lib/packing/wrap/flat-wrap";
import { roundWrap } from "#lib/packing/wrap/round-wrap";
import { tornPieces } from "#lib/packing/wrap/torn-pieces";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { MICROMETRES_PER_FOOT, MICROMETRES_PER_INCH } from "#lib/units/length";
import { MILLIGRAMS_PER_POUND } from "#lib/units/mass";

const inches = (count: number) => Math.round(count * MICROMETRES_PER_INCH);
const inInches = (um: number) => um / MICROMETRES_PER_INCH;
const cube = (side: number) => ({ lengthUm: inches(side), widthUm: inches(side), heightUm: inches(side) });
const CUBIC_INCH_ML = 16.387064;

const paper = {
  material: "packing-paper",
  useUnit: "sheet",
  bulkUm: null,
  form: { kind: "sheet", lengthUm: inches(36), widthUm: inches(24), thickUm: 76 },
} as const;
const sheetMg = sheetMass({
  lengthUm: inches(36),
  widthUm: inches(24),
  gramsPerSquareMetre: gramsPerSquareMetre(30),
});
const unitsFor = (...asked: Parameters<typeof fillAmount>) => {
  const fill = fillAmount(...asked);
  if (fill.kind !== "fill") throw new Error("fills nothing");
  return unitsOf(fill.theory);
};

describe("a strip wound round a piece", () => {
  // Computed from the geometry of a wound strip; sizes, overlap and margin are common practice, no source.
  const bubble = { thickUm: inches(3 / 16), overlapUm: inches(2), endMarginUm: inches(1) };
  const mug = { acrossUm: inches(4.5), heightUm: inches(4) };

  it.each([
    [2, 32.6, 3],
    [3, 49.7, 5],
  ])("%s times round a mug is %s in: %s pieces of a 12 in roll", (layers, length, pieces) => {
    const need = roundWrap(mug, { ...bubble, layers });
    expect(inInches(need.lengthUm)).toBeCloseTo(length, 1);
    expect(inInches(need.wishedWidthUm)).toBe(9.5);
    expect(tornPieces(need, { widthUm: inches(12), pieceUm: inches(12) }).pieces).toBe(pieces);
  });

  it("of large bubble three times round a vase of 5 in is 63.3 in", () => {
    const wrap = { ...bubble, layers: 3, thickUm: inches(0.5) };
    expect(inInches(roundWrap({ acrossUm: inches(5), heightUm: inches(10) }, wrap).lengthUm)).toBeCloseTo(
      63.3,
      1,
    );
  });

  it("twice round a plate 10.5 in across and 1 in thick is 51 in", () => {
    const plate = { acrossUm: inches(10.5), thickUm: inches(1), alongUm: inches(10.5) };
    expect(inInches(flatWrap(plate, { ...bubble, layers: 2 }).lengthUm)).toBeCloseTo(51, 1);
  });

  // The closed form against the turning itself: the arc of an Archimedean spiral, √(r² + (dr/dφ)²) dφ by Simpson's
  // rule. Elementary calculus. The wound strip's middle starts half a layer above the piece.
  it.each([
    [4.5, 3 / 16, 2],
    [4.5, 3 / 16, 6],
    [5, 1 / 2, 3],
  ])("of %s in, %s in thick, %s turns is as long as the spiral to 1 in 500", (across, thick, turns) => {
    const steps = 2000;
    const slope = thick / (2 * Math.PI);
    const width = (turns * 2 * Math.PI) / steps;
    const speed = (angle: number) => Math.hypot(across / 2 + slope * angle, slope);
    const weight = (index: number) => (index % 2 === 1 ? 4 : 2);
    const inner = Array.from({ length: steps - 1 }, (_, i) => weight(i + 1) * speed((i + 1) * width));
    const sum = inner.reduce((total, each) => total + each, speed(0) + speed(steps * width));
    const spiral = (sum * width) / 3;
    const wrap = { layers: turns, thickUm: thick * MICROMETRES_PER_INCH, overlapUm: 0, endMarginUm: 0 };
    const strip = roundWrap({ acrossUm: across * MICROMETRES_PER_INCH, heightUm: 1 }, wrap);
    expect(Math.abs(inInches(strip.lengthUm) / spiral - 1)).toBeLessThan(0.002);
  });

  it("is what a part roll gives back: the length between two diameters", () => {
    const thick = inches(3 / 16);
    const wrap = { layers: 40, thickUm: thick, overlapUm: 0, endMarginUm: 0 };
    const wound = roundWrap({ acrossUm: inches(3), heightUm: 1 }, wrap).lengthUm;
    const fullUm = inches(3) + 2 * 40 * thick;
    const left = amountLeftOnRoll({
      outerUm: fullUm,
      coreUm: inches(3),
      fullUm: inches(18.5),
      // A roll of 18.5 in of this film, by π/4 (full² - core²) / thickness: mathforum.org, drmath 67031 (2003).
      fullAmount: amountOfUnits(
        ((Math.PI / 4) * (inches(18.5) ** 2 - inches(3) ** 2)) / thick / MICROMETRES_PER_FOOT,
      ),
    });
    expect(unitsOf(left)).toBeCloseTo(wound / MICROMETRES_PER_FOOT, 2);
  });
});

describe("bubble torn from a roll", () => {
  // Perforation every 12 in is an option named by a museum's materials database; the counts are geometry.
  const roll = { widthUm: inches(12), pieceUm: inches(12) };
  const strip = (lengthUm: number) => ({
    lengthUm,
    widthUm: inches(12),
    wishedWidthUm: inches(12),
    overlapUm: 0,
  });

  it("is 175 pieces from 175 ft", () => {
    expect(tornPieces(strip(175 * MICROMETRES_PER_FOOT), roll).pieces).toBe(175);
  });

  it("covers two square feet with two pieces of a 12 in roll", () => {
    const { usedUm } = tornPieces(strip(inches(24)), roll);
    expect((usedUm * roll.widthUm) / MICROMETRES_PER_FOOT ** 2).toBe(2);
  });
});

describe("the void round a carton in a carton", () => {
  // Computed: 12³ - 8³ cu in. 52 and 86 cu in to a sheet, 65 to a square foot of large bubble, 85 g/m²: from memory.
  const room = boxInBox({ inside: cube(8), boardUm: 0 }, cube(12), { gapUm: inches(1), thisSideUp: true });

  it("of 8 in in one of 12 in is 1216 cubic inches", () => {
    expect(room.voidMl / CUBIC_INCH_ML).toBeCloseTo(1216, 6);
  });

  it.each([
    ["firm", 23.4, 636],
    ["loose", 14.1, 385],
  ] as const)("takes, %s, %s sheets and %s g of paper", (manner, sheets, grams) => {
    const taken = unitsFor(room.voidMl, paper, USUAL_HABITS, manner);
    expect(taken).toBeCloseTo(sheets, 1);
    expect(Math.round((taken * sheetMg) / 1000)).toBe(grams);
  });

  it("takes 19 square feet and about 150 g of large bubble", () => {
    const bubble = {
      ...paper,
      material: "large-bubble",
      useUnit: "square-foot",
      form: { kind: "roll", widthUm: inches(12), pieceUm: inches(12), thickUm: inches(0.5) },
    } as const;
    const feet = unitsFor(room.voidMl, bubble, USUAL_HABITS, "firm");
    const footMg = sheetMass({ lengthUm: inches(12), widthUm: inches(12), gramsPerSquareMetre: 85 });
    expect(Math.round(feet)).toBe(19);
    expect(Math.abs((feet * footMg) / 1000 - 150)).toBeLessThan(5);
  });

  // Computed with a board of 0.115 lb a square foot and tape of 2.3 g a metre, from memory; rounded to 10 g there.
  it.each([
    [10, 560],
    [12, 1080],
  ])("makes a double box of 8 in in %s in about %s g heavier on paper", (side, grams) => {
    const outer = cube(side);
    const gap = boxInBox({ inside: cube(8), boardUm: 0 }, outer, { gapUm: inches(1), thisSideUp: true });
    const fillMg = unitsFor(gap.voidMl, paper, USUAL_HABITS, "firm") * sheetMg;
    const tapeMg = (cartonTape({ ...outer, pattern: "h" }) / 1_000_000) * 2300;
    const added = (fillMg + cartonMass(outer) + tapeMg) / 1000;
    expect(Math.abs(added - grams)).toBeLessThanOrEqual(8);
  });

  // Density of loose fill of expanded polystyrene, 0.17 to 0.20 lb a cubic foot:
  // https://en-academic.com/dic.nsf/enwiki/711176
  it.each([
    [0.17, 0.1968],
    [0.2, 0.2315],
  ])("of 2000 cubic inches takes loose fill of %s lb a cubic foot by %s lb", (density, pounds) => {
    const mlPerUnit = 1000;
    const loose = {
      ...paper,
      material: "loose-fill",
      useUnit: "each",
      form: { kind: "loose", mlPerUnit },
    } as const;
    const habits = { ...USUAL_HABITS, looseOverfill: 1 };
    const units = unitsFor(2000 * CUBIC_INCH_ML, loose, habits, "firm");
    const cubicFoot = blockVolume(cube(12));
    expect(units * mlPerUnit * (density / cubicFoot)).toBeCloseTo(pounds, 3);
  });
});

describe("the board of a carton", () => {
  // Blank of a slotted carton: https://drumpulper.com/how-to-calculate-the-weight-of-corrugated-boxes.html
  it("is a blank of 50 by 24 in, 8.3333 square feet, for a cube of 12 in", () => {
    expect(cartonBlank(cube(12))).toBe(inches(50) * inches(24));
    expect(cartonBlank(cube(12)) / MICROMETRES_PER_FOOT ** 2).toBeCloseTo(8.3333, 4);
  });

  // The same page; board of 121.2 lb a thousand square feet (42 + 42 + 26 x 1.43, the take-up from memory).
  it("of 121.2 lb a thousand square feet weighs 1.01 lb in a cube of 12 in", () => {
    expect(Math.abs(cartonMass(cube(12), 0.1212) / MILLIGRAMS_PER_POUND - 1.01)).toBeLessThanOrEqual(0.01);
  });

  // Two walls on length and width, four flaps on height: derived from how a slotted carton folds. 5/32 in is C flute,
  // printed as 4 mm: https://coltpaper.com/corrugated-box-guide/
  it("adds 5/16 in to length and width and 5/8 in to the height of a cube of 12 in in C flute", () => {
    const outside = cartonOutside(cube(12), 0.15625 * MICROMETRES_PER_INCH);
    expect([outside.lengthUm, outside.widthUm, outside.heightUm].map(inInches)).toEqual([
      12.3125, 12.3125, 12.625,
    ]);
  });
});

describe("tape on a carton", () => {
  // Six strips with legs of 2.5 in: derived from the geometry of a slotted carton.
  it("is 102 in for an H with all legs of 2.5 in on 12 by 12 in", () => {
    const legs = { centreUm: inches(2.5), edgeUm: inches(2.5) };
    expect(inInches(cartonTape({ ...cube(12), pattern: "h" }, legs))).toBe(102);
  });

  // A roll of 55 yd: http://www.turnerpackaging.com/tape/
  it("closes 56 cartons of 12 in with a roll of 55 yd, a strip above and below", () => {
    const tape = cartonTape({ ...cube(12), pattern: "single" });
    expect(Math.floor(inches(55 * 36) / tape)).toBe(56);
  });
});
