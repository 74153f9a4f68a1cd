import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import type { Piece, PieceBody, StickingOut } from "#lib/packing/piece/piece";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { draftedRecipe } from "#lib/packing/recipe/drafted-recipe";
import * as bench from "../lib/packing/bench-shop";

const { inches } = bench;
const shelf = [bench.tissue, bench.paper, bench.smallBubble, bench.householdTape, bench.cartonTape];
/** Hand-written recipes leave less than the asked cushion in some of these cartons. */
const habits = { ...USUAL_HABITS, cushionUm: { sturdy: inches(1), usual: inches(1), thin: inches(1) } };

const part = (across: number, height: number) => ({ acrossUm: inches(across), heightUm: inches(height) });
const cylinder = (across: number, height: number): PieceBody => ({
  kind: "cylinder",
  ...part(across, height),
});
const box = (length: number, width: number, height: number): PieceBody => ({
  kind: "box",
  lengthUm: inches(length),
  widthUm: inches(width),
  heightUm: inches(height),
});
const glass: PieceBody = {
  kind: "stemmed",
  bowl: part(3.25, 3.75),
  stem: part(0.4, 3),
  foot: part(2.75, 0.25),
};
const plate: PieceBody = { kind: "flat", acrossUm: inches(10.5), longUm: null, thickUm: inches(1) };
const arm = (out: number, where: "left" | "right"): StickingOut => ({
  part: where === "left" ? "spout" : "handle",
  where,
  outUm: inches(out),
  alongUm: inches(3),
});
const piece = (massGrams: number, body: PieceBody, more: Partial<Piece> = {}): Piece => ({
  ...bench.mug,
  massMg: massGrams * 1000,
  body,
  hollows: [],
  stickingOut: [],
  ...more,
});

// What parcels weigh that are packed by recipes written by hand: common practice, no source. Small bubble, tissue and
// paper as there, fill paper at 52 cu in a sheet; the sizes of the pieces are invented to suit their names. Geometry
// knows neither the pieces nor the packers, so that a tenth is close.
describe("a drafted parcel against one packed by a recipe written by hand", () => {
  it.each([
    ["stemmed glass", piece(180, glass, { hollows: [{ kind: "share", share: 0.5 }] }), 1, [8, 8, 12], 746],
    ["mug", piece(370, bench.mug.body, bench.mug), 1, [8, 8, 8], 797],
    ["mug pair", piece(370, bench.mug.body, bench.mug), 2, [12, 9, 8], 1375],
    [
      "teapot",
      piece(750, cylinder(5, 4.5), { lid: part(3, 1.5), stickingOut: [arm(2, "left"), arm(1.5, "right")] }),
      1,
      [12, 10, 10],
      1493,
    ],
    ["four plates", piece(500, plate), 4, [14, 14, 10], 3214],
    [
      "bowl",
      piece(700, cylinder(8, 3.5), { hollows: [{ kind: "share", share: 0.7 }] }),
      1,
      [12, 12, 8],
      1535,
    ],
    ["bottle", piece(500, cylinder(3, 9)), 1, [8, 8, 14], 1141],
    [
      "vase",
      piece(1200, cylinder(5, 10), { hollows: [{ kind: "share", share: 0.6 }] }),
      1,
      [12, 12, 14],
      2496,
    ],
    ["framed tile", piece(900, box(9, 9, 1)), 1, [12, 12, 4], 1410],
    ["mantel clock", piece(2200, box(9, 6, 8)), 1, [16, 12, 12], 3585],
  ] as const)("weighs the same to a tenth: %s", (_, described, pieces, [length, width, height], grams) => {
    const recipe = draftedRecipe({
      piece: described,
      pieces,
      habits,
      supplies: chosenSupplies("mixed", shelf),
      carton: bench.cartonOf(length, width, height),
      outer: null,
      measures: "imperial",
    });
    expect(recipe.kind).toBe("drafted");
    const mass = recipe.kind === "drafted" ? recipe.mass.mg / 1000 : Number.NaN;
    expect(Math.abs(mass / grams - 1)).toBeLessThan(0.1);
  });
});
