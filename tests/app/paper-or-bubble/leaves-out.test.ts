import { describe, expect, it } from "vitest";
import { cushionAnswer } from "#app/paper-or-bubble/cushion-answer.ts";
import type { CushionGround } from "#app/paper-or-bubble/cushion-ground.ts";
import { leavesOut } from "#app/paper-or-bubble/leaves-out.ts";
import { GRAM, UP_TO_FOUR } from "../../lib/cushioning/small-ways";
import { typeOf } from "../cartons/small-shelf";
import { groundOf, groundWith, recipeOf } from "./small-answer";

function left(ground: CushionGround): string[] {
  return leavesOut(cushionAnswer(ground, { prices: new Map(), cardId: null }), ground);
}
const NONE = { paper: null, bubble: null, mixed: null };

describe("what the comparison leaves out", () => {
  it("is nothing where all is known", () => {
    expect(left(groundOf())).toEqual([]);
  });

  it("is postage where no rate card holds", () => {
    expect(left(groundOf({ cards: [] }))).toEqual([
      expect.stringMatching(/^No rate card holds: postage counts as nothing/),
    ]);
  });

  it("says that zones count alike where none was noted", () => {
    expect(left(groundOf({ zoneCounts: [] }))).toEqual([
      expect.stringMatching(/each zone of the card counts alike/),
    ]);
  });

  it("names what has no price and what was never weighed, each once", () => {
    const { replacement } = groundOf();
    expect(left(groundOf({ replacement: new Map([...replacement, ["bubble", null] as const]) }))).toEqual([
      "Without a price, so counted as nothing: Some bubble.",
    ]);
    const { supplyMasses } = groundOf().packing;
    expect(left(groundWith({ supplyMasses: new Map([...supplyMasses, ["sheets", null] as const]) }))).toEqual(
      [
        "Never weighed, so that postage can’t be told for what takes it: Some sheets.",
        "Left out of all sums, as the postage is known on one side alone: mug, tile.",
      ],
    );
    expect(left(groundWith({ pieceMasses: new Map([["mug", 370_000]]) }))).toEqual([
      "Never weighed, so that postage can’t be told for what takes it: tile.",
    ]);
  });

  it("names what the rate card does not take at every weight", () => {
    const [pounds] = groundOf().cards;
    if (pounds === undefined) throw new RangeError("the ground has a card");
    const cards = [{ ...pounds, card: UP_TO_FOUR }];
    expect(left({ ...groundOf(), cards })).toEqual([]);
    // A tile of 1.5 kg on paper weighs 1.97 kg, over 4 lb, which are 1.81 kg.
    const heavy = groundWith({
      pieceMasses: new Map([
        ["mug", 370 * GRAM],
        ["tile", 1_500 * GRAM],
      ]),
    });
    expect(left({ ...heavy, cards })).toEqual([
      "The rate card does not take every parcel of tile: what it does not take is in no postage.",
    ]);
  });

  it("tells of minutes and breakage that are said for some styles alone", () => {
    const minutes = { ...NONE, paper: 5 };
    const said = { minutes, brokenPerMille: NONE };
    expect(left(groundOf({ said, hourMinor: 2_400 }))).toEqual([
      expect.stringMatching(/^The minutes of packing are said for some styles alone/),
    ]);
    expect(left(groundOf({ said }))).toEqual([]);
    const priced = ["mug", "tile"].map((id) => ({ ...typeOf(id, null), valueMinor: 4_000 }));
    const broken = { minutes: NONE, brokenPerMille: { ...NONE, bubble: 4 } };
    expect(left(groundOf({ said: broken, itemTypes: priced }))).toEqual([
      expect.stringMatching(/^How many parcels break is said for some styles alone/),
    ]);
    const both = { minutes: { ...minutes, bubble: 4 }, brokenPerMille: { ...NONE, bubble: 4, paper: 9 } };
    expect(left(groundOf({ said: both, hourMinor: 2_400, itemTypes: priced }))).toEqual([]);
  });

  it("tells of cards that name no carton", () => {
    const recipes = groundOf().packing.recipes.map((each) => ({ ...each, cartons: [] }));
    expect(left(groundWith({ recipes }))).toEqual([expect.stringMatching(/^Some cards name no carton/)]);
  });

  it("tells how many parcels have a card in one style or none, and of rarer kinds", () => {
    const recipes = [...groundOf().packing.recipes, recipeOf("vase", "paper", { sheets: 5 })];
    const { packing } = groundWith({ recipes });
    const vases = new Map([...groundOf().expectedPieces, ["vase", 7.6] as const]);
    expect(left(groundOf({ packing, expectedPieces: vases }))).toEqual([
      "About 8 more parcels have a card in fewer than two styles: vase.",
    ]);
    // 62 kinds of parcel, one of each a month; 60 are looked at
    const sent = Array.from({ length: 62 }, (_, at) => ({
      ...{ pieces: [{ itemTypeId: "mug", pieces: at + 1 }], style: "paper" as const, zoneId: "near" },
      parcels: 1,
    }));
    const mugs = new Map([["mug", (62 * 63) / 2]]);
    expect(left(groundOf({ sent, expectedPieces: mugs })).at(-1)).toBe(
      "About 2 parcels of rarer kinds are left out.",
    );
  });
});
