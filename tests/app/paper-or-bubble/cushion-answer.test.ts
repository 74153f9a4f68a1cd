import { describe, expect, it } from "vitest";
import { cushionAnswer, piecesValue } from "#app/paper-or-bubble/cushion-answer.ts";
import type { CushionGround } from "#app/paper-or-bubble/cushion-ground.ts";
import type { WhatIf } from "#app/paper-or-bubble/what-if.ts";
import { comparisons } from "#lib/cushioning/comparison";
import { addDays } from "#lib/units/day";
import { typeOf } from "../cartons/small-shelf";
import { groundOf, recipeOf, TODAY } from "./small-answer";

const AS_IT_IS: WhatIf = { prices: new Map(), cardId: null };
const answer = (change: Partial<CushionGround> = {}, whatIf = AS_IT_IS) =>
  cushionAnswer(groundOf(change), whatIf);
const sentMugs = (
  pieces: number,
  parcels: number,
  style: "paper" | "bubble",
  zoneId: string | null = "near",
) => ({
  ...{ pieces: [{ itemTypeId: "mug", pieces }], style, zoneId, parcels },
});

describe("paper and bubble compared for all that the shop sends", () => {
  it("takes the kinds of late whatever the style and zone in which they went out", () => {
    const sent = [sentMugs(1, 6, "paper"), sentMugs(1, 2, "bubble", "far"), sentMugs(2, 6, "paper", null)];
    // 8 + 12 = 20 mugs went out and 40 are to come: twice as many of each; tiles one by one
    const { kinds } = answer({ sent });
    expect(kinds.map(({ pieces, parcels }) => [pieces[0]?.itemTypeId, pieces[0]?.pieces, parcels])).toEqual([
      ["mug", 1, 16],
      ["mug", 2, 12],
      ["tile", 1, 10],
    ]);
    for (const { costs, comparisons: held } of kinds) expect(held).toEqual(comparisons(costs));
  });

  it("adds up all on paper, all on bubble, and each in its cheapest way", () => {
    const { kinds, allIn, best, styles } = answer();
    expect(styles).toEqual(["paper", "bubble"]);
    for (const style of styles) {
      const sum = kinds.reduce(
        (all, { parcels, costs }) =>
          all + parcels * (costs.find(({ way }) => way.style === style)?.totalMinor ?? Number.NaN),
        0,
      );
      expect(allIn.get(style)?.totalMinor).toBeCloseTo(sum, 6);
      expect(best.totalMinor).toBeLessThanOrEqual(sum + 1e-6);
    }
  });

  it("weighs the zones by the parcels that went there; alike where none was noted", () => {
    expect(answer()).toMatchObject({ hasZones: true, terms: { zones: [{ share: 30 }, { share: 10 }] } });
    const none = answer({ zoneCounts: [] });
    expect(none).toMatchObject({ hasZones: false, terms: { zones: [{ share: 1 }, { share: 1 }] } });
  });

  it("tries another price without changing what the shop has", () => {
    const ground = groundOf();
    const dearer = cushionAnswer(ground, { prices: new Map([["bubble", 500_000]]), cardId: null });
    const [now, then] = [cushionAnswer(ground, AS_IT_IS), dearer].map(
      ({ kinds }) => kinds[0]?.costs.find(({ way }) => way.style === "bubble")?.totalMinor ?? Number.NaN,
    );
    // 4 sq ft at 25 cents more
    expect((then ?? Number.NaN) - (now ?? Number.NaN)).toBeCloseTo(100, 9);
    expect(ground.replacement.get("bubble")).toBe(250_000);
  });

  it("tries a card that is not valid yet as of its first day, and has none where none holds", () => {
    const [pounds] = groundOf().cards;
    if (pounds === undefined) throw new RangeError("the ground has a card");
    const validFrom = addDays(TODAY, 30);
    const later = { ...pounds, id: "later", validFrom, card: { ...pounds.card, validFrom } };
    const cards = [later, pounds];
    expect(answer({ cards }).card?.id).toBe("pounds");
    const tried = answer({ cards }, { ...AS_IT_IS, cardId: "later" });
    expect(tried).toMatchObject({ card: { id: "later" }, terms: { shipDay: validFrom } });
    expect(tried.kinds[0]?.costs[0]?.postageMinor).toBeGreaterThan(500);
    expect(answer({ cards: [later] })).toMatchObject({ card: null, terms: { card: null } });
  });

  it("keeps apart what has one way alone, and what past parcels would have cost", () => {
    const base = groundOf();
    const packing = {
      ...base.packing,
      recipes: [...base.packing.recipes, recipeOf("vase", "paper", { sheets: 5 })],
    };
    const sent = [
      sentMugs(1, 6, "paper"),
      { ...sentMugs(1, 3, "bubble"), pieces: [{ itemTypeId: "vase", pieces: 1 }] },
    ];
    const { single, past, kinds } = answer({ packing, sent, expectedPieces: new Map([["vase", 4]]) });
    expect(single).toMatchObject([{ parcels: 4, pieces: [{ itemTypeId: "vase", pieces: 1 }] }]);
    expect(kinds).toEqual([]);
    // The vases went out on bubble, for which they have no card.
    expect(past).toMatchObject({ parcels: 6, leftOut: 3 });
  });
});

describe("what the pieces of a parcel sell for", () => {
  const itemTypes = [
    { ...typeOf("mug", null), valueMinor: 2_500 },
    { ...typeOf("bowl", null), valueMinor: null },
  ];
  it("is added up, and not known where one price is not", () => {
    expect(piecesValue([{ itemTypeId: "mug", pieces: 3 }], { itemTypes })).toBe(7_500);
    const both = [
      { itemTypeId: "mug", pieces: 3 },
      { itemTypeId: "bowl", pieces: 1 },
    ];
    expect(piecesValue(both, { itemTypes })).toBeNull();
    expect(piecesValue([{ itemTypeId: "gone", pieces: 1 }], { itemTypes })).toBeNull();
  });
});
