import { describe, expect, it } from "vitest";
import { cushionFinding } from "#app/paper-or-bubble/cushion-finding.ts";
import { plainCost } from "../../lib/cushioning/small-ways";
import { DOLLARS } from "../cartons/small-shelf";
import { answerOf, kindOf } from "./small-answer";

type Priced = Parameters<typeof plainCost>;
const kind = (parcels: number, ...costs: readonly Priced[]) =>
  kindOf(
    `type ${parcels}`,
    parcels,
    costs.map(([style, total, takes, change]) =>
      plainCost(style, total, takes, { postageMinor: 500, ...change }),
    ),
  );
const found = (...kinds: ReturnType<typeof kind>[]) => cushionFinding(answerOf(kinds), DOLLARS);

describe("what the screen found", () => {
  it("is that one style wins throughout, and by how much", () => {
    // 10 x 100 and 5 x 50 are 12.50
    expect(found(kind(10, ["paper", 900], ["bubble", 800]), kind(5, ["paper", 600], ["bubble", 550]))).toBe(
      "Bubble for all that you send: $12.50 cheaper than all on paper.",
    );
  });

  it("is the rule, and how many kinds are cheaper in another style", () => {
    const [mugs, tiles] = [
      kind(10, ["paper", 800], ["bubble", 900]),
      kind(5, ["paper", 700], ["bubble", 550]),
    ];
    // All on paper 115.00, all on bubble 117.50; each in its own way 107.50
    expect(found(mugs, tiles)).toBe(
      "Paper as a rule, but one kind of parcel is cheaper on bubble, which saves $7.50.",
    );
    expect(found(mugs, tiles, kind(1, ["paper", 700], ["bubble", 550]))).toBe(
      "Paper as a rule, but 2 of 3 kinds of parcel are cheaper on bubble, which saves $9.00.",
    );
  });

  it("names no one style where the others are cheaper in several", () => {
    const [mugs, tiles, vases] = [
      kind(10, ["paper", 800], ["bubble", 900], ["mixed", 850]),
      kind(1, ["paper", 700], ["bubble", 550], ["mixed", 800]),
      kind(2, ["paper", 700], ["bubble", 900], ["mixed", 600]),
    ];
    expect(found(mugs, tiles, vases)).toBe(
      "Paper as a rule, but 2 of 3 kinds of parcel are cheaper another way, which saves $3.50.",
    );
    expect(found(mugs, vases)).toBe(
      "Paper as a rule, but one kind of parcel is cheaper mixed, which saves $2.00.",
    );
  });

  it("counts no kind as cheaper in another style that costs the same in both", () => {
    const alike = kind(10, ["paper", 800], ["bubble", 800]);
    expect(found(alike, kind(5, ["paper", 600], ["bubble", 550]))).toBe(
      "Bubble for all that you send: $2.50 cheaper than all on paper.",
    );
    expect(found(alike)).toBe("All on paper and all on bubble cost the same.");
  });

  it("does not say all where a kind has no card in the style that wins", () => {
    const mixed = kind(2, ["paper", 700], ["mixed", 750]);
    expect(found(kind(10, ["paper", 900], ["bubble", 800]), mixed)).toMatch(
      /^Bubble wherever you have a card for it: /,
    );
  });

  it("is no finding where postage is known on one side alone", () => {
    const unweighed = kind(
      3,
      ["paper", 200, {}, { postageMinor: null }],
      ["bubble", 900, {}, { materialsMinor: 200, postageMinor: 700 }],
    );
    expect(cushionFinding(answerOf([], { untold: [unweighed] }), DOLLARS)).toBe(
      "Not to be told yet: of each kind of parcel the postage is known on one side alone.",
    );
  });

  it("says that postage is left out where it is not known for any parcel", () => {
    const unsent = { postageMinor: null };
    const bare = (parcels: number, paper: number, bubble: number) =>
      kind(parcels, ["paper", paper, {}, unsent], ["bubble", bubble, {}, unsent]);
    expect(found(bare(10, 200, 350))).toBe(
      "Paper for all that you send: $15.00 cheaper than all on bubble, postage left out.",
    );
    expect(found(bare(10, 200, 200))).toBe("All on paper and all on bubble cost the same, postage left out.");
    expect(found(bare(10, 200, 350), bare(1, 300, 200))).toMatch(/which saves \$1\.00, postage left out\.$/);
    expect(found(bare(10, 200, 350), kind(1, ["paper", 900], ["bubble", 950]))).not.toContain("left out");
  });

  it("says that what has no price is left out, and claims nothing where nothing has one", () => {
    const part = { unpriced: ["tissue"] };
    expect(found(kind(10, ["paper", 900, {}, part], ["bubble", 800, {}, part]))).toMatch(
      /cheaper than all on paper, what has no price left out\.$/,
    );
    const none = { unpriced: ["sheets"], postageMinor: null };
    expect(found(kind(10, ["paper", 0, {}, none], ["bubble", 0, {}, none]))).toBe(
      "Not to be told yet: nothing that these parcels take has a price, and their postage is not known.",
    );
    expect(found(kind(10, ["paper", 100, {}, none], ["bubble", 200, {}, none]))).toMatch(
      /, postage and what has no price left out\.$/,
    );
  });

  it("is that there is nothing to compare, and whether a card or a parcel is missing", () => {
    expect(cushionFinding(answerOf([], { single: [] }), DOLLARS)).toBe(
      "Nothing to compare yet: no parcel was packed of late, and none is expected.",
    );
    expect(cushionFinding(answerOf([], { single: [kind(3, ["paper", 900])] }), DOLLARS)).toBe(
      "Nothing to compare yet: an item type needs a recipe in two cushion styles.",
    );
  });
});
