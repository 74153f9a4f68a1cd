import { describe, expect, it } from "vitest";
import { askedListing } from "#app/pack/listing/asked-listing.ts";
import { weightBasisWords } from "#app/pack/listing/weight-basis-words.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import * as bench from "../../../lib/packing/bench-shop";
import { SMALL_CHOICES } from "../small-choices";

const ground = {
  choices: SMALL_CHOICES,
  postage: { card: null, zones: [] },
  hasZones: false,
  habits: USUAL_HABITS,
  shelf: {
    supplies: [bench.tissue, bench.paper, bench.cartonTape],
    cartons: [bench.cartonOf(12, 12, 12)],
    undescribed: [],
  },
  terms: { masses: new Map(), book: new Map(), replacement: new Map() },
};
const said = (query: Record<string, string>) => askedListing(query, ground, "imperial");
const mug = { type: "new", form: "round", sizes: "4 x 5 in", bare: "13 oz" };

describe("what is said to the address of a listing", () => {
  it("is a question where nothing was asked, and what to mend where something can't be read", () => {
    expect(said({})).toMatchObject({ kind: "unanswered", finding: "Which weight can this piece promise?" });
    const unread = said({ ...mug, sizes: "0 x 5" });
    expect(unread.finding).toBe("No promise yet: mend what is marked.");
    expect([...unread.problems.keys()]).toEqual(["sizes"]);
    expect([...said({ type: "gone" }).problems.keys()]).toEqual(["type"]);
  });

  it("is a promise by the card of an item type, or by sizes where it is something new", () => {
    expect(said({ type: "mug" })).toMatchObject({
      kind: "answered",
      answer: { from: "card" },
      bySizes: null,
    });
    const bySizes = said(mug);
    expect(bySizes).toMatchObject({
      kind: "answered",
      answer: { from: "sizes", cartonId: "carton-12-12-12" },
    });
    expect(bySizes.finding).toMatch(/ A guess from its sizes alone\.$/);
  });

  it("names the field and the way out where no carton holds the piece", () => {
    const large = said({ ...mug, sizes: "40 x 5 in" });
    expect(large.finding).toBe("No promise yet: this piece can’t be packed so.");
    expect(large.problems.get("carton")).toMatch(/inside, or larger, would do\.$/);
  });
});

describe("what a weight rests on", () => {
  const guess = { guess: true, parcels: 0 };
  const learned = {
    weights: { ...SMALL_CHOICES.weights, shop: { ...SMALL_CHOICES.weights.shop, parcels: 40 } },
  };

  it("is said, and a guess from sizes says what corrects it", () => {
    expect(weightBasisWords("card", { guess: false, parcels: 14 }, SMALL_CHOICES)).toBe(
      "from 14 weighed parcels.",
    );
    expect(weightBasisWords("sizes", guess, SMALL_CHOICES)).toMatch(/^a guess from its sizes: a tenth more/);
    expect(weightBasisWords("sizes", guess, learned)).toMatch(/corrected as your 40 weighed parcels/);
  });
});
